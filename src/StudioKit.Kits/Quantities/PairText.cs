using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Quantities;

/// <summary>Values written together: sizes, pixel counts and ranges.</summary>
internal static class PairText
{
    private static readonly char[] Times = ['x', '×'];

    /// <summary>Two lengths, with an example that fits the key.</summary>
    public static ValueKind Size(string example) => new(
        "two lengths", example, text => Lengths(text, example, 2).Then(all => (object?)new Size(Length.FromMillimeters(all[0]), Length.FromMillimeters(all[1]))),
        value => $"{Kinds.Length.Write(((Size)value!).First)} x {Kinds.Length.Write(((Size)value).Second)}")
    {
        Pattern = () => Patterns.Sizes(2),
        Measure = value => Ends(((Size)value!).First.Millimeters, ((Size)value).Second.Millimeters),
        ReadMeasure = text => NumberText.Quantity(text, UnitDimension.Length),
    };

    /// <summary>Three lengths.</summary>
    public static ValueKind Box(string example) => new(
        "three lengths", example, text => Lengths(text, example, 3).Then(all =>
            (object?)new Box(Length.FromMillimeters(all[0]), Length.FromMillimeters(all[1]), Length.FromMillimeters(all[2]))),
        value => $"{Kinds.Length.Write(((Box)value!).First)} x {Kinds.Length.Write(((Box)value).Second)} x {Kinds.Length.Write(((Box)value).Third)}")
    {
        Pattern = () => Patterns.Sizes(3),
        Measure = value => Ends(((Box)value!).First.Millimeters, ((Box)value).Second.Millimeters, ((Box)value).Third.Millimeters),
        ReadMeasure = text => NumberText.Quantity(text, UnitDimension.Length),
    };

    public static readonly ValueKind Pixels = new(
        "two whole numbers", "8192 x 5464", ReadPixels, value => $"{NumberText.Write(((PixelCount)value!).Wide)} x {NumberText.Write(((PixelCount)value).High)}")
    {
        Pattern = () => @"\d+\s*[x×]\s*\d+",
        Measure = value => Ends(((PixelCount)value!).Wide, ((PixelCount)value).High),
        ReadMeasure = text => NumberText.Bare(text, "a number", "6000"),
    };

    public static ValueKind Apertures(ValueKind kind) => new(
        "a range, an f-number to an f-number", "f/2.8 to f/32",
        text => Ends(text, kind, "f/2.8 to f/32").Then(ends => (object?)new ApertureRange((FNumber)ends[0]!, (FNumber)ends[1]!)),
        value => $"{kind.Write(((ApertureRange)value!).Widest)} to {kind.Write(((ApertureRange)value).Smallest)}")
    {
        Pattern = () => kind.Pattern!() + Patterns.To + kind.Pattern!(),
        Measure = value => new Extent(((ApertureRange)value!).Widest.Value, ((ApertureRange)value).Smallest.Value),
        ReadMeasure = kind.ReadMeasure,
    };

    public static ValueKind Isos(ValueKind kind) => new(
        "a range, an ISO speed to an ISO speed", "100 to 6400",
        text => Ends(text, kind, "100 to 6400").Then(ends => (object?)new IsoRange((IsoSpeed)ends[0]!, (IsoSpeed)ends[1]!)),
        value => $"{kind.Write(((IsoRange)value!).Lowest)} to {kind.Write(((IsoRange)value).Highest)}")
    {
        Pattern = () => kind.Pattern!() + Patterns.To + kind.Pattern!(),
        Measure = value => new Extent(((IsoRange)value!).Lowest.Value, ((IsoRange)value).Highest.Value),
        ReadMeasure = kind.ReadMeasure,
    };

    // Both ends of a range, of which the smaller comes first.
    private static Reading<object?[]> Ends(string text, ValueKind kind, string example)
    {
        var middle = text.IndexOf(" to ", StringComparison.Ordinal);
        if (middle < 0)
        {
            return Reading<object?[]>.Bad($"'{text}' is not {kind.Noun} to {kind.Noun}.", $"Write for example '{example}'.");
        }

        return kind.Read(text[..middle].Trim()).Then(low => kind.Read(text[(middle + 4)..].Trim()).Then(high =>
            kind.Measure!(low).Least <= kind.Measure(high).Least
                ? Reading<object?[]>.Good([low, high])
                : Reading<object?[]>.Bad($"'{text}' runs backwards.", $"Write the smaller number first, for example '{example}'.")));
    }

    private static Reading<double[]> Lengths(string text, string example, int count)
    {
        var parts = text.Split(Times);
        if (parts.Length != count)
        {
            return Reading<double[]>.Bad($"'{text}' is not {(count == 2 ? "two" : "three")} lengths.", $"Write for example '{example}'.");
        }

        // 36 x 24 mm: a unit at the end serves all, as people write it.
        var shared = Array.TrueForAll(parts[..^1], part => NumberText.Bare(part, "", "").IsGood) ? UnitAtEnd(parts[^1]) : "";
        var lengths = new double[count];
        for (var i = 0; i < count; i++)
        {
            var part = i < count - 1 && shared.Length > 0 ? $"{parts[i].Trim()} {shared}" : parts[i].Trim();
            var reading = NumberText.Quantity(part, UnitDimension.Length);
            if (!reading.IsGood)
            {
                return Reading<double[]>.Bad(reading.Problem!, shared.Length > 0 || reading.Hint is null ? reading.Hint : $"Write for example '{example}'.");
            }

            lengths[i] = reading.Value;
        }

        return Reading<double[]>.Good(lengths);
    }

    private static string UnitAtEnd(string text)
    {
        var cursor = new TextCursor(text.Trim());
        _ = cursor.TryNumber(out _);
        cursor.SkipSpaces();
        return cursor.Rest;
    }

    private static Reading<object?> ReadPixels(string text)
    {
        var parts = text.Split(Times);
        return parts.Length != 2
            ? Reading<object?>.Bad($"'{text}' is not two whole numbers.", "Write for example '8192 x 5464'.")
            : NumberText.Whole(parts[0].Trim()).Then(wide => NumberText.Whole(parts[1].Trim()).Then(high => (object?)new PixelCount(wide, high)));
    }

    private static Extent Ends(double first, double second) => new(Math.Min(first, second), Math.Max(first, second));

    private static Extent Ends(double first, double second, double third) =>
        new(Math.Min(first, Math.Min(second, third)), Math.Max(first, Math.Max(second, third)));
}
