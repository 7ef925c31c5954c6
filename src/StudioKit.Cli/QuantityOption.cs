using System.CommandLine;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Cli;

/// <summary>Options whose values carry units, read by the same rules as a kit file.</summary>
internal static class QuantityOption
{
    private static readonly (Type Type, string Word)[] Words =
    [
        (typeof(Length), "length"), (typeof((Length, Length)), "size"), (typeof(Angle), "angle"), (typeof(Duration), "time"), (typeof(Mass), "mass"),
        (typeof(FNumber), "f-number"), (typeof(FlashPower), "power"), (typeof(IsoSpeed), "speed"), (typeof(ShutterSpeed), "time"), (typeof(Stops), "stops"),
        (typeof(GuideNumber), "guide-number"), (typeof(ExposureValue), "brightness"), (typeof(Magnification), "magnification"), (typeof(PowerStep), "step"),
        (typeof(double), "number"), (typeof(int), "count"),
    ];

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
        HelpName = Word(typeof(T)),
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

    // What goes in, by the kind of quantity.
    private static string Word(Type type)
    {
        var quantity = Nullable.GetUnderlyingType(type) ?? type;
        return Words.FirstOrDefault(pair => pair.Type == quantity).Word ?? "value";
    }
}
