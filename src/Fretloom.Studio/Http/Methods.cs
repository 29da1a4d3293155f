using Microsoft.AspNetCore.Http;

namespace Fretloom.Studio.Http;

/// <summary>What may be done with what lies at an address.</summary>
internal static class Methods
{
    /// <summary>To read it, or its headers alone.</summary>
    public static string[] Read { get; } = [HttpMethods.Get, HttpMethods.Head];
}
