using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Http;

namespace Fretloom.Studio.Http;

/// <summary>
/// Answers only to the name of its own address: a page elsewhere whose name is made to lead to this computer (DNS rebinding) comes with that
/// name in the Host header.
/// </summary>
internal static class OwnAddress
{
    private const int DefaultPort = 80;

    private static readonly string[] ThisComputer = ["127.0.0.1", "localhost", "[::1]"];

    /// <summary>Refuses other names, 403.</summary>
    public static Task Check(HttpContext context, RequestDelegate next)
    {
        var connection = context.Connection;
        return IsOwn(context.Request.Host, connection.LocalIpAddress, connection.LocalPort)
            ? next(context)
            : Problems.Write(
                context,
                StatusCodes.Status403Forbidden,
                "The studio answers only at the address that it gave when it was opened."
            );
    }

    /// <summary>Whether a Host header names the address and port that the request came in on, or this computer.</summary>
    internal static bool IsOwn(HostString host, IPAddress? address, int port) =>
        (host.Port ?? DefaultPort) == port
        && HasPort(host)
        && (
            ThisComputer.Contains(host.Host, StringComparer.OrdinalIgnoreCase)
            || (address is not null && host.Host == Written(address))
        );

    // A port that cannot be read counts as none.
    private static bool HasPort(HostString host) =>
        host.Port is { } port
            ? host.Value!.EndsWith(":" + port.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            : host.Value == host.Host;

    private static string Written(IPAddress address)
    {
        var plain = address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address;
        return new UriBuilder(Uri.UriSchemeHttp, plain.ToString()).Uri.Host;
    }
}
