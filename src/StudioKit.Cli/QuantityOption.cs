using System.CommandLine;
using StudioKit.Kits.Quantities;

namespace StudioKit.Cli;

/// <summary>Options whose values carry units, read by the same rules as a kit file.</summary>
internal static class QuantityOption
{
    /// <summary>An option that must be given.</summary>
    public static Option<T> Required<T>(string name, string description, TryRead<T> read)
    {
        var option = Create(name, description, read);
        option.Required = true;
        return option;
    }

    /// <summary>An option that may be left out, with what is then taken.</summary>
    public static Option<T> Optional<T>(string name, string description, TryRead<T> read, T fallback)
    {
        var option = Create(name, description, read);
        option.DefaultValueFactory = _ => fallback;
        return option;
    }

    private static Option<T> Create<T>(string name, string description, TryRead<T> read) => new(name)
    {
        Description = description,
        HelpName = "value",
        CustomParser = result =>
        {
            if (result.Tokens.Count == 1 && read(result.Tokens[0].Value, out var value, out var problem))
            {
                return value;
            }

            problem = result.Tokens.Count == 1 ? "" : "needs one value";
            if (problem.Length == 0)
            {
                read(result.Tokens[0].Value, out _, out problem);
            }

            result.AddError($"{name}: {problem}");
            return default!;
        },
    };
}
