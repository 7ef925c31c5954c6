using UnitsNet;

namespace StudioKit.Kits.Quantities;

/// <summary>Values written together: sizes, pixel counts and ranges.</summary>
internal static class PairText
{
    private static readonly char[] Times = ['x', '×'];

    /// <summary>Two lengths, with an example that fits the key.</summary>
    public static ValueKind<Size> Size(string example) => new(
        "two lengths", example, text => Lengths(text, example, 2).Then(all => new Size(all[0], all[1])),
        value => $"{Kinds.Length.Write(value.First)} x {Kinds.Length.Write(value.Second)}")
    {
        Pattern = () => Patterns.Sizes(2),
        Measure = value => Ends(value.First.Millimeters, value.Second.Millimeters),
        ReadMeasure = text => NumberText.Quantity(text, Dimension.Length),
    };

    public static readonly ValueKind<Box> Box = new(
        "three lengths", "600 mm x 300 mm x 220 mm", text => Lengths(text, "600 mm x 300 mm x 220 mm", 3).Then(all => new Box(all[0], all[1], all[2])),
        value => $"{Kinds.Length.Write(value.First)} x {Kinds.Length.Write(value.Second)} x {Kinds.Length.Write(value.Third)}")
    {
        Pattern = () => Patterns.Sizes(3),
        Measure = value => Ends(value.First.Millimeters, value.Second.Millimeters, value.Third.Millimeters),
        ReadMeasure = text => NumberText.Quantity(text, Dimension.Length),
    };

    public static readonly ValueKind<PixelCount> Pixels = new(
        "two whole numbers", "8192 x 5464", ReadPixels, value => $"{NumberText.Write(value.Wide)} x {NumberText.Write(value.High)}")
    {
        Pattern = () => @"\d+\s*[x×]\s*\d+",
        Measure = value => Ends(value.Wide, value.High),
        ReadMeasure = text => NumberText.Bare(text, "a number", "6000"),
    };

    /// <summary>A range whose low end comes first.</summary>
    public static ValueKind<Extent<T>> Range<T>(ValueKind<T> kind, string example, Func<T, double> number)
        where T : struct => new(
        $"a range, {kind.Noun} to {kind.Noun}", example, text => ReadRange(text, kind, example, number), value => $"{kind.Write(value.Low)} to {kind.Write(value.High)}")
        {
            Pattern = () => kind.Pattern!() + Patterns.To + kind.Pattern!(),
            Measure = value => (number(value.Low), number(value.High)),
            ReadMeasure = kind.ReadMeasure,
        };

    private static Reading<Extent<T>> ReadRange<T>(string text, ValueKind<T> kind, string example, Func<T, double> number)
        where T : struct
    {
        var middle = text.IndexOf(" to ", StringComparison.Ordinal);
        if (middle < 0)
        {
            return Reading<Extent<T>>.Bad($"'{text}' is not {kind.Noun} to {kind.Noun}.", $"Write for example '{example}'.");
        }

        return kind.Read(text[..middle].Trim()).Then(low => kind.Read(text[(middle + 4)..].Trim()).Then(high =>
            number(low) <= number(high)
                ? Reading<Extent<T>>.Good(new Extent<T>(low, high))
                : Reading<Extent<T>>.Bad($"'{text}' runs backwards.", $"Write the smaller number first, for example '{example}'.")));
    }

    private static Reading<Length[]> Lengths(string text, string example, int count)
    {
        var parts = text.Split(Times);
        if (parts.Length != count)
        {
            return Reading<Length[]>.Bad($"'{text}' is not {(count == 2 ? "two" : "three")} lengths.", $"Write for example '{example}'.");
        }

        // 36 x 24 mm: a unit at the end serves all, as people write it.
        var shared = Array.TrueForAll(parts[..^1], part => NumberText.Bare(part, "", "").IsGood) ? UnitAtEnd(parts[^1]) : "";
        var lengths = new Length[count];
        for (var i = 0; i < count; i++)
        {
            var part = i < count - 1 && shared.Length > 0 ? $"{parts[i].Trim()} {shared}" : parts[i].Trim();
            var reading = NumberText.Quantity(part, Dimension.Length);
            if (!reading.IsGood)
            {
                return Reading<Length[]>.Bad(reading.Problem!, shared.Length > 0 || reading.Hint is null ? reading.Hint : $"Write for example '{example}'.");
            }

            lengths[i] = Length.FromMillimeters(reading.Value);
        }

        return Reading<Length[]>.Good(lengths);
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
            ? Reading<PixelCount>.Bad($"'{text}' is not two whole numbers.", "Write for example '8192 x 5464'.")
            : NumberText.Whole(parts[0].Trim()).Then(wide => NumberText.Whole(parts[1].Trim()).Then(high => new PixelCount(wide, high)));
    }

    private static (double Least, double Most) Ends(params double[] numbers) => (numbers.Min(), numbers.Max());
}
