namespace Fretloom.Studio.Folder;

/// <summary>Where a folder is when every link on the way to it is followed.</summary>
internal static class RealPath
{
    /// <summary>Follows the links; a path that leads nowhere stays as it is.</summary>
    public static string Of(string folder)
    {
        var path = Path.GetFullPath(folder);
        if (Path.GetDirectoryName(path) is not { } above)
        {
            return path;
        }

        var here = Path.Combine(Of(above), Path.GetFileName(path));
        try
        {
            return Directory.ResolveLinkTarget(here, returnFinalTarget: true) is { } end ? Of(end.FullName) : here;
        }
        catch (IOException)
        {
            // Links that lead in a circle.
            return here;
        }
    }
}
