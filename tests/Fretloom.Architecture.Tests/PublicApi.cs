using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Fretloom.Architecture.Tests;

/// <summary>Writes the public types and members of a namespace as text, close to how C# writes them.</summary>
/// <remarks>Left out: what the compiler writes for records, explicit interface members, and nullability of references.</remarks>
internal static class PublicApi
{
    private const BindingFlags Own =
        BindingFlags.Public
        | BindingFlags.NonPublic
        | BindingFlags.Instance
        | BindingFlags.Static
        | BindingFlags.DeclaredOnly;

    /// <summary>One paragraph a type, sorted by name, its members sorted and indented.</summary>
    public static string Describe(IEnumerable<Type> types) =>
        string.Join("\n\n", types.OrderBy(TypeName, StringComparer.Ordinal).Select(Describe));

    private static string Describe(Type type)
    {
        var members = type.IsEnum
            ? type.GetFields(BindingFlags.Public | BindingFlags.Static).Select(EnumMember)
            : type.GetMembers(Own)
                .Where(IsVisible)
                .OrderBy(member => member.Name, StringComparer.Ordinal)
                .ThenBy(Member, StringComparer.Ordinal)
                .Select(Member);
        return string.Join("\n", members.Select(member => "    " + member).Prepend(Header(type)));
    }

    private static string Header(Type type)
    {
        var kind = type switch
        {
            { IsEnum: true } => "enum",
            { IsInterface: true } => "interface",
            { IsValueType: true } => IsRecord(type) ? "record struct" : "struct",
            { IsAbstract: true, IsSealed: true } => "static class",
            _ => (
                type.IsAbstract ? "abstract "
                : type.IsSealed ? "sealed "
                : ""
            ) + (IsRecord(type) ? "record" : "class"),
        };
        var parents = type.IsEnum ? [] : Parents(type).Select(TypeName).Order(StringComparer.Ordinal).ToArray();
        return $"{kind} {TypeName(type)}" + (parents.Length == 0 ? "" : $" : {string.Join(", ", parents)}");
    }

    /// <summary>The base class unless it goes without saying, and the interfaces that no parent brings along.</summary>
    private static IEnumerable<Type> Parents(Type type)
    {
        var inherited = type.GetInterfaces()
            .SelectMany(one => one.GetInterfaces())
            .Concat(type.BaseType?.GetInterfaces() ?? []);
        var interfaces = type.GetInterfaces().Except(inherited).Where(one => one.IsPublic);
        return type.BaseType is { } parent && parent != typeof(object) && !type.IsValueType
            ? interfaces.Prepend(parent)
            : interfaces;
    }

    private static bool IsRecord(Type type) => type.GetMethod("PrintMembers", Own) is not null;

    private static bool IsVisible(MemberInfo member) =>
        !member.IsDefined(typeof(CompilerGeneratedAttribute))
        && member switch
        {
            MethodInfo method => IsVisible(method)
                && (!method.IsSpecialName || method.Name.StartsWith("op_", StringComparison.Ordinal)),
            MethodBase constructor => IsVisible(constructor),
            FieldInfo field => field.IsPublic || field.IsFamily,
            PropertyInfo property => property.GetAccessors(nonPublic: true).Any(IsVisible),
            Type nested => nested.IsNestedPublic,
            _ => false,
        };

    private static bool IsVisible(MethodBase method) => method.IsPublic || method.IsFamily;

    private static string EnumMember(FieldInfo field) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{field.Name} = {Convert.ToInt64(field.GetRawConstantValue(), CultureInfo.InvariantCulture)}"
        );

    private static string Member(MemberInfo member) =>
        member switch
        {
            ConstructorInfo constructor => $"new({Parameters(constructor)})",
            MethodInfo method =>
                $"{Static(method)}{TypeName(method.ReturnType)} {method.Name}{Generics(method)}({Parameters(method)})",
            PropertyInfo property =>
                $"{Static(property.GetMethod!)}{TypeName(property.PropertyType)} {PropertyName(property)} {{ {Accessors(property)} }}",
            FieldInfo { IsLiteral: true } field =>
                $"const {TypeName(field.FieldType)} {field.Name} = {Literal(field.GetRawConstantValue())}",
            FieldInfo field => $"{(field.IsStatic ? "static " : "")}{TypeName(field.FieldType)} {field.Name}",
            Type nested => $"nested {TypeName(nested)}",
            _ => throw new ArgumentException($"No text for {member}"),
        };

    private static string Static(MethodInfo method) => method.IsStatic ? "static " : "";

    private static string Generics(MethodInfo method) =>
        method.IsGenericMethod ? $"<{string.Join(", ", method.GetGenericArguments().Select(TypeName))}>" : "";

    private static string PropertyName(PropertyInfo property) =>
        property.GetIndexParameters() is { Length: > 0 } index
            ? $"this[{string.Join(", ", index.Select(Parameter))}]"
            : property.Name;

    private static string Accessors(PropertyInfo property) =>
        string.Join(
            " ",
            new[]
            {
                property.GetMethod is null ? "" : "get;",
                property.SetMethod is { IsPublic: true } ? "set;" : "",
            }.Where(text => text.Length > 0)
        );

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters().Select(Parameter));

    private static string Parameter(ParameterInfo parameter)
    {
        var way = parameter switch
        {
            { IsOut: true } => "out ",
            { ParameterType.IsByRef: true } => "ref ",
            _ when parameter.IsDefined(typeof(ParamArrayAttribute))
                    || parameter.IsDefined(typeof(ParamCollectionAttribute)) => "params ",
            _ => "",
        };
        var fallback = parameter.HasDefaultValue ? $" = {Literal(parameter.RawDefaultValue)}" : "";
        return $"{way}{TypeName(parameter.ParameterType)} {parameter.Name}{fallback}";
    }

    private static string Literal(object? value) =>
        value switch
        {
            null => "default",
            string text => $"\"{text}\"",
            bool flag => flag ? "true" : "false",
            _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
        };

    private static string TypeName(Type type) =>
        type switch
        {
            { IsByRef: true } => TypeName(type.GetElementType()!),
            { IsArray: true } => TypeName(type.GetElementType()!) + "[]",
            { IsGenericParameter: true } => type.Name,
            _ when Nullable.GetUnderlyingType(type) is { } inner => TypeName(inner) + "?",
            _ when Keywords.TryGetValue(type, out var keyword) => keyword,
            { IsNested: true } => $"{TypeName(type.DeclaringType!)}.{type.Name}",
            { IsGenericType: true } =>
                $"{type.Name.Split('`')[0]}<{string.Join(", ", type.GetGenericArguments().Select(TypeName))}>",
            _ => type.Name,
        };

    private static readonly Dictionary<Type, string> Keywords = new()
    {
        [typeof(void)] = "void",
        [typeof(bool)] = "bool",
        [typeof(int)] = "int",
        [typeof(long)] = "long",
        [typeof(double)] = "double",
        [typeof(char)] = "char",
        [typeof(string)] = "string",
        [typeof(object)] = "object",
    };
}
