using System.Reflection;
using System.Runtime.CompilerServices;
using ArchUnitNET.xUnitV3;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace Fretloom.Architecture.Tests;

public class DomainTests
{
    /// <summary>Names of framework types, as patterns, that would tie the domain to a machine or a moment.</summary>
    [Theory]
    [InlineData(@"^System\.IO\.(File|Directory|Path|Stream|FileInfo|DirectoryInfo|FileStream)$")]
    [InlineData(@"^System\.(Console|Environment|AppContext)$")]
    [InlineData(@"^System\.(DateTime|DateTimeOffset|DateOnly|TimeOnly|TimeProvider)$")]
    [InlineData(@"^System\.Diagnostics\.(Stopwatch|Process)$")]
    [InlineData(@"^System\.(Net|Data|Threading\.Tasks\.Parallel)\b")]
    public void The_domain_knows_no_files_clock_or_machine(string pattern) =>
        Types()
            .That()
            .ResideInAssembly(House.Domain)
            .Should()
            .NotDependOnAny(Types(includeReferenced: true).That().HaveFullNameMatching(pattern))
            .WithoutRequiringPositiveResults()
            .Check(House.Architecture);

    /// <summary>
    /// <c>init</c> is allowed for records that hold any combination of their members; one that checks its members has
    /// get-only properties, because a <c>with</c> expression skips the constructor.
    /// </summary>
    [Fact]
    public void Public_properties_of_the_domain_cannot_change_after_construction()
    {
        var settable =
            from type in House.Domain.GetExportedTypes()
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static)
            where
                !typeof(Exception).IsAssignableFrom(property.DeclaringType)
                || property.DeclaringType!.Assembly == type.Assembly
            where property.SetMethod is { IsPublic: true } setter && !IsInit(setter)
            select $"{type.FullName}.{property.Name}";

        Assert.Empty(settable);
    }

    [Fact]
    public void Public_fields_of_the_domain_are_constant()
    {
        var changeable =
            from type in House.Domain.GetExportedTypes()
            where !type.IsEnum
            from field in type.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static)
            where !field.IsInitOnly && !field.IsLiteral
            select $"{type.FullName}.{field.Name}";

        Assert.Empty(changeable);
    }

    [Fact]
    public void Public_structs_of_the_domain_are_read_only()
    {
        var changeable =
            from type in House.Domain.GetExportedTypes()
            where type.IsValueType && !type.IsEnum
            where !type.IsDefined(typeof(IsReadOnlyAttribute))
            select type.FullName;

        Assert.Empty(changeable);
    }

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
}
