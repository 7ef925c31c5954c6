namespace StudioKit.Kits.Quantities;

/// <summary>A sensor by its sides, as <c>36 mm x 24 mm</c>; a name of the trade where it stands for one size only.</summary>
/// <remarks>
/// "Full frame" is the 36 mm × 24 mm of 35 mm film. Other names stand for several sizes, so they are answered with the size they mostly mean, as written in
/// handbooks (from memory): the plan's framings go with the sides, and a tenth off is a tenth off.
/// </remarks>
internal static class SensorText
{
    private const string Example = "36 mm x 24 mm";
    private const string Handbook = "its sides are in the camera's handbook.";

    private static readonly ValueKind<Size> Sides = PairText.Size(Example);

    // The last word is a piece of what people write, in capitals and without blanks and hyphens.
    private static readonly (string Piece, string Hint)[] Names =
    [
        ("APSC", $"The name stands for several sizes: write 'sensor: 23.5 mm x 15.6 mm' if that is yours (some are 22.3 mm x 14.9 mm), as {Handbook}"),
        ("MEDIUMFORMAT", $"The name stands for several sizes: write for example 'sensor: 43.8 mm x 32.9 mm', as {Handbook}"),
        ("1INCH", $"The name is older than the sensor and no measure of it: write 'sensor: 13.2 mm x 8.8 mm', or what the handbook says."),
        ("ONEINCH", $"The name is older than the sensor and no measure of it: write 'sensor: 13.2 mm x 8.8 mm', or what the handbook says."),
        ("1\"", $"The name is older than the sensor and no measure of it: write 'sensor: 13.2 mm x 8.8 mm', or what the handbook says."),
        ("CROP", $"Divide 36 mm and 24 mm by the crop factor: 1.5 gives 'sensor: 24 mm x 16 mm'; {Handbook}"),
        ("35MM", "Write 'sensor: 36 mm x 24 mm', or 'sensor: full frame'."),
    ];

    public static readonly ValueKind<Size> Kind = Sides with
    {
        Read = Read,
        Noun = "a sensor's two sides",
        AlsoWords = ["full frame"],
        Pattern = () => $"({Patterns.Sizes(2)}|[fF][uU][lL][lL][ \\-]?[fF][rR][aA][mM][eE])",
    };

    private static Reading<Size> Read(string text)
    {
        var plain = text.Trim().ToUpperInvariant().Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
        if (plain == "FULLFRAME")
        {
            return Sides.Read(Example);
        }

        var sides = Sides.Read(text);
        var named = Array.Find(Names, name => plain.Contains(name.Piece, StringComparison.Ordinal));
        return sides.IsGood || named.Hint is null ? sides : Reading<Size>.Bad($"'{text}' does not say how large the sensor is.", named.Hint);
    }
}
