using Fretloom.Testing;

namespace Fretloom.Architecture.Tests;

/// <summary>One approved file for each namespace of the domain lists what others may build on.</summary>
public class PublicApiTests
{
    private static readonly string[] Folder = ["Fretloom.Architecture.Tests", "PublicApi"];

    private static readonly ILookup<string, Type> ByNamespace = House
        .Domain.GetExportedTypes()
        .ToLookup(type => type.Namespace!);

    public static TheoryData<string> Namespaces =>
        [.. ByNamespace.Select(group => group.Key).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Namespaces))]
    public void The_public_API_is_the_approved_one(string name) =>
        Approved.Matches(PublicApi.Describe(ByNamespace[name]), [.. Folder, $"{name}.txt"]);

    [Fact]
    public void No_approved_file_outlives_its_namespace()
    {
        var files = Directory.GetFiles(Repository.PathTo(["tests", .. Folder]), "*.txt");

        Assert.Empty(files.Select(Path.GetFileNameWithoutExtension).Except(ByNamespace.Select(group => group.Key)));
    }
}
