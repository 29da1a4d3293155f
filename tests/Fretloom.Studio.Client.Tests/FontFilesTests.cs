using Fretloom.Pages.Fonts;
using Fretloom.Testing;

namespace Fretloom.Studio.Client.Tests;

/// <summary>The accidentals of the web pages are those that the program draws. FRETLOOM_APPROVE=1 writes the files anew.</summary>
public class FontFilesTests
{
    [Theory]
    [InlineData("FretloomAccidentals.ttf", 400)]
    [InlineData("FretloomAccidentals-Bold.ttf", 600)]
    public void The_accidentals_are_as_drawn(string name, int weight)
    {
        var path = Repository.PathTo("src", "Fretloom.Studio.Client", "wwwroot", "fonts", name);
        var drawn = TextFaces.Find(TextFaces.Accidentals, weight)!.Web.ToArray();
        if (Environment.GetEnvironmentVariable(Approved.ApproveVariable) == "1")
        {
            File.WriteAllBytes(path, drawn);
        }

        Assert.Equal(drawn, File.ReadAllBytes(path));
    }
}
