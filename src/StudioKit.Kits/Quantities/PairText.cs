using StudioKit.Physics.Exposure;

namespace StudioKit.Kits.Quantities;

/// <summary>Values written together: sizes, pixel counts and ranges.</summary>
internal static class PairText
{
    private const string To = " to ";

    private static readonly char[] Times = ['x', '×'];
    private static readonly string[] Dashes = [To, "–", "..", "-"];

    /// <summary>Two lengths, with an example that fits the key.</summary>
    public static ValueKind<Size> Size(string example) => new(
        "two lengths", example, text => Lengths(text, example, 2).Then(all => new Size(OwnUnits.Length(all[0]), OwnUnits.Length(all[1]))),
        value => $"{Kinds.Length.Write(OwnUnits.Of(value.First))} x {Kinds.Length.Write(OwnUnits.Of(value.Second))}")
    {
        Pattern = () => Patterns.Sizes(2),
        Dimension = UnitDimension.Length,
        Measure = value => Ends(OwnUnits.Of(value.First), OwnUnits.Of(value.Second)),
        ReadMeasure = text => NumberText.Quantity(text, UnitDimension.Length),
    };

    /// <summary>Three lengths.</summary>
    public static ValueKind<Box> Box(string example) => new(
        "three lengths", example, text => Lengths(text, example, 3).Then(all =>
            new Box(OwnUnits.Length(all[0]), OwnUnits.Length(all[1]), OwnUnits.Length(all[2]))),
        value => $"{Kinds.Length.Write(OwnUnits.Of(value.First))} x {Kinds.Length.Write(OwnUnits.Of(value.Second))} x {Kinds.Length.Write(OwnUnits.Of(value.Third))}")
    {
        Pattern = () => Patterns.Sizes(3),
        Dimension = UnitDimension.Length,
        Measure = value => Ends(OwnUnits.Of(value.First), OwnUnits.Of(value.Second), OwnUnits.Of(value.Third)),
        ReadMeasure = text => NumberText.Quantity(text, UnitDimension.Length),
    };

    public static readonly ValueKind<PixelCount> Pixels = new(
        "two whole numbers", "8192 x 5464", ReadPixels, value => $"{NumberText.Write(value.Wide)} x {NumberText.Write(value.High)}")
    {
        Pattern = () => @"\d+\s*[x×]\s*\d+",
        Measure = value => Ends(value.Wide, value.High),
        ReadMeasure = text => NumberText.Bare(text, "a number", "6000"),
    };

    public static ValueKind<ApertureRange> Apertures(ValueKind<double> kind) => new(
        "a range, an f-number to an f-number", "f/2.8 to f/32",
        text => Ends(text, kind, "f/2.8 to f/32").Then(ends => new ApertureRange(new FNumber(ends[0]), new FNumber(ends[1]))),
        value => $"{kind.Write(value.Widest.Value)} to {kind.Write(value.Smallest.Value)}")
    {
        Pattern = () => kind.Pattern!() + Patterns.To + kind.Pattern!(),
        Measure = value => new Extent(value.Widest.Value, value.Smallest.Value),
        ReadMeasure = kind.ReadMeasure,
    };

    public static ValueKind<IsoRange> Isos(ValueKind<double> kind) => new(
        "a range, an ISO speed to an ISO speed", "100 to 6400",
        text => Ends(text, kind, "100 to 6400").Then(ends => new IsoRange(new IsoSpeed(ends[0]), new IsoSpeed(ends[1]))),
        value => $"{kind.Write(value.Lowest.Value)} to {kind.Write(value.Highest.Value)}")
    {
        Pattern = () => kind.Pattern!() + Patterns.To + kind.Pattern!(),
        Measure = value => new Extent(value.Lowest.Value, value.Highest.Value),
        ReadMeasure = kind.ReadMeasure,
    };

    public static ValueKind<LightRange> Lights(ValueKind<double> kind) => new(
        "a range, an exposure value or illuminance to another", "EV 12 to EV 15",
        text => Ends(text, kind, "EV 12 to EV 15").Then(ends => new LightRange(new ExposureValue(ends[0]), new ExposureValue(ends[1]))),
        value => $"{kind.Write(value.Darkest.AtIso100)} to {kind.Write(value.Brightest.AtIso100)}")
    {
        Pattern = () => kind.Pattern!() + Patterns.To + kind.Pattern!(),
        Measure = value => new Extent(value.Darkest.AtIso100, value.Brightest.AtIso100),
        ReadMeasure = kind.ReadMeasure,
    };

    // Both ends of a range, of which the smaller comes first.
    private static Reading<double[]> Ends(string text, ValueKind<double> kind, string example)
    {
        if (Middle(text) is not { } middle)
        {
            return NoRange(text, kind, example);
        }

        var (low, high) = (kind.Read(text[..middle.At].Trim()), kind.Read(text[(middle.At + middle.Length)..].Trim()));
        return middle.Length != To.Length && !(low.IsGood && high.IsGood)
            ? NoRange(text, kind, example)
            : low.Then(least => high.Then(most => least <= most
                ? Reading<double[]>.Good([least, most])
                : Reading<double[]>.Bad($"'{text}' runs backwards.", $"Write the smaller number first, for example '{example}'.")));
    }

    private static Reading<double[]> NoRange(string text, ValueKind<double> kind, string example) =>
        Reading<double[]>.Bad($"'{text}' is not {kind.Noun} to {kind.Noun}.", $"Write both ends, for example '{example}'.");

    // Where the two ends part: at the word, else at a dash, which people write as often.
    private static (int At, int Length)? Middle(string text)
    {
        foreach (var mark in Dashes)
        {
            var at = text.IndexOf(mark, StringComparison.Ordinal);
            if (at > 0)
            {
                return (at, mark.Length);
            }
        }

        return null;
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

    private static Reading<PixelCount> ReadPixels(string text)
    {
        var parts = text.Split(Times);
        return parts.Length != 2
            ? Reading<PixelCount>.Bad($"'{text}' is not two whole numbers.", "Write the pixels along both sides, for example '6000 x 4000'.")
            : NumberText.Whole(parts[0].Trim()).Then(wide => NumberText.Whole(parts[1].Trim()).Then(high => new PixelCount(wide, high)));
    }

    private static Extent Ends(double first, double second) => new(Math.Min(first, second), Math.Max(first, second));

    private static Extent Ends(double first, double second, double third) =>
        new(Math.Min(first, Math.Min(second, third)), Math.Max(first, Math.Max(second, third)));
}
