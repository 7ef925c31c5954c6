using System.Reflection;
using System.Xml.Linq;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Tests;

/// <summary>House rules for calculations, read from the assembly and its XML documentation.</summary>
/// <remarks>
/// A calculation is a public static method that returns a value and stands in a public static class of one of the physics folders. What stands
/// on a value type (factories, operators, conversions) or a record is vocabulary, not calculation, and so is a constant; a method that takes names
/// alone looks a row up in a table whose rows carry their own sources. These are exempt.
/// </remarks>
public sealed class ConsistencyTests
{
    private static readonly Assembly Physics = typeof(SourceAttribute).Assembly;

    private static readonly string[] Folders = ["Optics", "Exposure", "Light", "Daylight", "Structure", "Packing"];

    private static readonly string[] Standings = ["read", "excerpt", "secondary", "from memory", "practice"];

    private static readonly Dictionary<string, XElement> Documentation =
        XDocument.Load(Path.ChangeExtension(Physics.Location, ".xml")).Descendants("member")
            .ToDictionary(member => member.Attribute("name")!.Value, StringComparer.Ordinal);

    [Fact]
    public void There_are_calculations_to_look_at() => Calculations().Should().HaveCountGreaterThan(20);

    [Fact]
    public void Every_calculation_names_its_source() =>
        Calculations().Where(method => SourcesOf(method).Count == 0).Select(Name).Should().BeEmpty();

    [Fact]
    public void Every_source_that_is_named_stands_in_the_bibliography() =>
        AllSources().Where(source => !Bibliography.Entries.ContainsKey(source.Key)).Select(source => source.Key).Should().BeEmpty();

    [Fact]
    public void Every_source_says_where_in_the_work_to_look() =>
        AllSources().Where(source => string.IsNullOrWhiteSpace(source.Locator)).Select(source => source.Key).Should().BeEmpty();

    [Fact]
    public void Every_entry_of_the_bibliography_says_how_well_it_is_known() =>
        Bibliography.Entries.Values.Where(entry => !Standings.Contains(entry.Standing, StringComparer.Ordinal))
            .Select(entry => entry.Key).Should().BeEmpty();

    [Fact]
    public void Every_number_that_goes_into_a_calculation_has_a_unit() =>
        Calculations()
            .SelectMany(method => method.GetParameters()
                .Where(parameter => IsNumber(parameter.ParameterType) && !HasUnit(ParameterText(method, parameter.Name!)))
                .Select(parameter => $"{Name(method)}: {parameter.Name}"))
            .Should().BeEmpty("a param that is a double says its unit in square brackets, [1] for a ratio");

    [Fact]
    public void Every_number_that_comes_out_of_a_calculation_has_a_unit() =>
        Calculations()
            .Where(method => IsNumber(method.ReturnType) && !HasUnit(DocumentationOf(method)?.Element("returns")?.Value))
            .Select(Name)
            .Should().BeEmpty("returns of a double says its unit in square brackets, [1] for a ratio");

    [Theory]
    [InlineData("Exit over entrance pupil diameter p [1]; > 0.", true)]
    [InlineData("Focal length f [m]; > 0.", true)]
    [InlineData("Focal length f; > 0.", false)]
    [InlineData("Focal length f []; > 0.", false)]
    [InlineData(null, false)]
    public void A_unit_is_what_stands_in_square_brackets(string? text, bool hasUnit) => HasUnit(text).Should().Be(hasUnit);

    private static IEnumerable<MethodInfo> Calculations() =>
        Physics.GetExportedTypes()
            .Where(type => type.IsAbstract && type.IsSealed && InPhysicsFolder(type))
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(method => !method.IsSpecialName && method.ReturnType != typeof(void) && !LooksUpByName(method));

    private static bool LooksUpByName(MethodInfo method) =>
        method.GetParameters() is { Length: > 0 } parameters && parameters.All(parameter => parameter.ParameterType == typeof(string));

    private static bool InPhysicsFolder(Type type) =>
        Folders.Any(folder => $"{type.Namespace}.".StartsWith($"StudioKit.Physics.{folder}.", StringComparison.Ordinal));

    private static List<SourceAttribute> SourcesOf(MethodInfo method) =>
        [.. method.GetCustomAttributes<SourceAttribute>(), .. method.DeclaringType!.GetCustomAttributes<SourceAttribute>()];

    private static IEnumerable<SourceAttribute> AllSources() =>
        Physics.GetTypes().SelectMany(type => type
            .GetMembers(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Append(type)
            .SelectMany(member => member.GetCustomAttributes<SourceAttribute>(inherit: false)));

    // Doubles, one or many; by-reference for out and in.
    private static bool IsNumber(Type type)
    {
        var bare = type.IsByRef ? type.GetElementType()! : type;
        return bare == typeof(double)
            || bare == typeof(double[])
            || (bare.IsGenericType && bare.GenericTypeArguments is [var item] && IsNumber(item));
    }

    private static bool HasUnit(string? text)
    {
        var open = text?.IndexOf('[', StringComparison.Ordinal) ?? -1;
        var close = open < 0 ? -1 : text!.IndexOf(']', open);
        return close > open && !string.IsNullOrWhiteSpace(text![(open + 1)..close]);
    }

    private static XElement? DocumentationOf(MethodInfo method) => Documentation.GetValueOrDefault(DocumentationId(method));

    private static string? ParameterText(MethodInfo method, string name)
    {
        var member = DocumentationOf(method);
        return Parameter(member) ?? Parameter(Inherited(member));

        string? Parameter(XElement? from) =>
            from?.Elements("param").FirstOrDefault(param => param.Attribute("name")?.Value == name)?.Value;
    }

    private static XElement? Inherited(XElement? member) =>
        member?.Element("inheritdoc")?.Attribute("cref")?.Value is { } id ? Documentation.GetValueOrDefault(id) : null;

    private static string Name(MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}";

    private static string DocumentationId(MethodInfo method)
    {
        var parameters = method.GetParameters();
        var name = $"M:{method.DeclaringType!.FullName}.{method.Name}";
        return parameters.Length == 0 ? name : $"{name}({string.Join(',', parameters.Select(parameter => TypeId(parameter.ParameterType)))})";
    }

    private static string TypeId(Type type)
    {
        if (type.IsByRef)
        {
            return $"{TypeId(type.GetElementType()!)}@";
        }

        if (type.IsArray)
        {
            return $"{TypeId(type.GetElementType()!)}[{new string(',', type.GetArrayRank() - 1)}]";
        }

        if (!type.IsGenericType)
        {
            return type.FullName!.Replace('+', '.');
        }

        var open = type.GetGenericTypeDefinition().FullName!;
        return $"{open[..open.IndexOf('`', StringComparison.Ordinal)]}{{{string.Join(',', type.GenericTypeArguments.Select(TypeId))}}}";
    }
}
