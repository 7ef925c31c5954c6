using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field.Pictures;
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
        (typeof(Length), "length"), (typeof(PixelDimensions), "pixels"), (typeof((Length, Length)), "size"), (typeof(Angle), "angle"), (typeof(Duration), "time"), (typeof(Mass), "mass"),
        (typeof(FNumber), "f-number"), (typeof(FlashPower), "power"), (typeof(IsoSpeed), "speed"), (typeof(ShutterSpeed), "time"), (typeof(Stops), "stops"),
        (typeof(GuideNumber), "guide-number"), (typeof(ExposureValue), "brightness"), (typeof(Magnification), "magnification"), (typeof(PowerStep), "step"),
        (typeof(double), "number"), (typeof(int), "count"), (typeof(TextPlace), "line:column"), (typeof(DateOnly), "date"),
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

    /// <summary>Reads only what lies in a range, so that no calculation is asked for what it has no answer to.</summary>
    /// <param name="read">Reads the quantity.</param>
    /// <param name="measure">Its number, in whatever unit.</param>
    /// <param name="least">Smallest value taken, as a person writes it.</param>
    /// <param name="most">Largest value taken.</param>
    public static TryRead<T> Between<T>(TryRead<T> read, Func<T, double> measure, string least, string most) => (string text, out T value, out string problem) =>
    {
        if (!read(text, out value, out problem))
        {
            return false;
        }

        read(least, out var lowest, out _);
        read(most, out var highest, out _);
        var (number, slack) = (measure(value), 1e-9 * Math.Abs(measure(value)));
        problem = number >= measure(lowest) - slack && number <= measure(highest) + slack ? "" : $"'{text}' is out of range. It may be {least} to {most}.";
        return problem.Length == 0;
    };

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
