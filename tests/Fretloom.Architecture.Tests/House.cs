using System.Reflection;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Assembly = System.Reflection.Assembly;

namespace Fretloom.Architecture.Tests;

/// <summary>The product's assemblies in the order of the house: each may use only those before it.</summary>
internal static class House
{
    /// <summary>The product's assemblies with the packages each may use, by the names of the packages' assemblies.</summary>
    public static readonly IReadOnlyList<(string Name, string[] Packages)> Floors =
    [
        ("Fretloom", []),
        ("Fretloom.Scores", ["ClearScript.Core", "ClearScript.V8", "NAudio.Core", "NAudio.Midi"]),
        ("Fretloom.Lessons", ["Markdig", "YamlDotNet"]),
        (
            "Fretloom.Pages",
            ["ClearScript.Core", "ClearScript.V8", "SkiaSharp", "Svg.Skia", "Svg.Model", "ShimSkiaSharp"]
        ),
        (
            "Fretloom.Studio",
            // All of these come with the framework Microsoft.AspNetCore.App.
            [
                "Microsoft.AspNetCore",
                "Microsoft.AspNetCore.Connections.Abstractions",
                "Microsoft.AspNetCore.Hosting.Abstractions",
                "Microsoft.AspNetCore.Hosting.Server.Abstractions",
                "Microsoft.AspNetCore.Http",
                "Microsoft.AspNetCore.Http.Abstractions",
                "Microsoft.AspNetCore.Http.Extensions",
                "Microsoft.AspNetCore.Http.Features",
                "Microsoft.AspNetCore.Routing",
                "Microsoft.AspNetCore.Server.Kestrel",
                "Microsoft.AspNetCore.Server.Kestrel.Core",
                "Microsoft.Extensions.DependencyInjection.Abstractions",
                "Microsoft.Extensions.Features",
                "Microsoft.Extensions.Hosting",
                "Microsoft.Extensions.Hosting.Abstractions",
                "Microsoft.Extensions.Options",
                "Microsoft.Extensions.Primitives",
                "Microsoft.Net.Http.Headers",
            ]
        ),
        ("Fretloom.Cli", ["System.CommandLine", "Spectre.Console"]),
    ];

    /// <summary>The domain: no packages, files, clock or culture.</summary>
    public static Assembly Domain { get; } = Load("Fretloom");

    /// <summary>All types of the product.</summary>
    public static ArchUnitNET.Domain.Architecture Architecture { get; } =
        new ArchLoader().LoadAssemblies([.. Floors.Select(floor => Load(floor.Name))]).Build();

    /// <summary>One of the product's assemblies.</summary>
    public static Assembly Load(string name) => Assembly.Load(new AssemblyName(name));
}
