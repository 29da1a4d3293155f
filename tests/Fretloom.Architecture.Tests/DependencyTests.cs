using ArchUnitNET.xUnitV3;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace Fretloom.Architecture.Tests;

public class DependencyTests
{
    public static TheoryData<string, string> Upward =>
        [
            .. from low in House.Floors.Index()
            from high in House.Floors.Skip(low.Index + 1)
            select (low.Item.Name, high.Name),
        ];

    [Theory]
    [MemberData(nameof(Upward))]
    public void A_project_uses_none_that_stands_below_it_in_the_list(string project, string later) =>
        Types()
            .That()
            .ResideInAssembly(House.Load(project))
            .Should()
            .NotDependOnAny(Types().That().ResideInAssembly(House.Load(later)))
            .WithoutRequiringPositiveResults()
            .Check(House.Architecture);

    public static TheoryData<string> Projects => [.. House.Floors.Select(floor => floor.Name)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_uses_only_its_own_packages(string project)
    {
        var allowed = House.Floors.Single(floor => floor.Name == project).Packages;

        var used = House
            .Load(project)
            .GetReferencedAssemblies()
            .Select(reference => reference.Name!)
            .Where(name => !IsFramework(name) && House.Floors.All(floor => floor.Name != name));

        Assert.Empty(used.Except(allowed));
    }

    [Theory]
    [InlineData("Theory", "(Neck|Shapes|Hand|Claims|Exercises|Sentences|Exhibits)")]
    [InlineData("Neck", "(Shapes|Hand|Claims|Exercises|Sentences|Exhibits)")]
    [InlineData("Shapes", "(Hand|Claims|Exercises|Sentences|Exhibits)")]
    [InlineData("Hand", "(Claims|Exercises|Sentences|Exhibits)")]
    public void The_foundations_of_the_domain_use_nothing_that_is_built_on_them(string folder, string above) =>
        Types()
            .That()
            .ResideInNamespaceMatching($@"^Fretloom\.{folder}(\.|$)")
            .Should()
            .NotDependOnAny(Types().That().ResideInNamespaceMatching($@"^Fretloom\.{above}(\.|$)"))
            .WithoutRequiringPositiveResults()
            .Check(House.Architecture);

    /// <summary>Part of .NET itself. System.CommandLine is not: it is a package.</summary>
    private static bool IsFramework(string assembly) =>
        assembly != "System.CommandLine"
        && (
            assembly.StartsWith("System.", StringComparison.Ordinal)
            || assembly.StartsWith("Microsoft.CSharp", StringComparison.Ordinal)
            || assembly.StartsWith("Microsoft.Win32.", StringComparison.Ordinal)
        );
}
