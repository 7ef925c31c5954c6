using StudioKit.Kits.Quantities;
using StudioKit.Physics;

namespace StudioKit.Kits;

/// <summary>The lengths that a kit gives in inches, feet or yards, as it writes them, so that paper can say them in the words of whoever measured or bought them.</summary>
/// <param name="Texts">What is written, by the length in millimetres to the thousandth.</param>
public sealed record WrittenLengths(ValueDictionary<string> Texts)
{
    private static readonly string[] ForeignSymbols = ["in", "inch", "inches", "\"", "″", "ft", "foot", "feet", "'", "′", "yd"];

    /// <summary>None.</summary>
    public static WrittenLengths None { get; } = new(new ValueDictionary<string>());

    /// <summary>Gathers them from what a kit and its parts say.</summary>
    /// <param name="written">Values as they were written, by the path of their key; a pair such as <c>24 in x 16 in</c> gives both its sides.</param>
    /// <exception cref="ArgumentNullException">There are no values.</exception>
    public static WrittenLengths Of(ValueDictionary<string> written)
    {
        ArgumentNullException.ThrowIfNull(written);
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var side in written.Values.Where(IsForeign).SelectMany(Sides))
        {
            if (NumberText.Quantity(side, UnitDimension.Length) is { IsGood: true, Value: var millimetres })
            {
                texts.TryAdd(Key(millimetres), side);
            }
        }

        return texts.Count == 0 ? None : new WrittenLengths(new ValueDictionary<string>(texts));
    }

    /// <summary>What the kit wrote for a length; none where it wrote no such length in inches, feet or yards.</summary>
    /// <param name="millimetres">The length [mm].</param>
    public string? Of(double millimetres) => Texts.Count == 0 ? null : Texts.GetValueOrDefault(Key(millimetres));

    private static bool IsForeign(string text) => Array.Exists(ForeignSymbols, symbol => text.Contains(symbol, StringComparison.Ordinal)) && text.AsSpan().ContainsAnyInRange('0', '9');

    // A pair may have its unit once, at its end; how far off a value may be stands behind it.
    private static IEnumerable<string> Sides(string text)
    {
        var sides = PlusMinus.Split(text).Value.Split(['x', '×'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var unit = sides.Length == 0 ? null : UnitTable.AtEnd(sides[^1], UnitDimension.Length);
        return unit is null || !ForeignSymbols.Contains(unit.Symbol) ? [] : sides.Select(side => UnitTable.AtEnd(side, UnitDimension.Length) is null ? $"{side} {unit.Symbol}" : side);
    }

    private static string Key(double millimetres) => millimetres.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
