namespace StudioKit.Kits.Quantities;

/// <summary>Which way ground falls, as the camera looks at it: a word, or an angle from straight away towards the right.</summary>
internal static class DownhillText
{
    private static readonly (string Word, double Degrees)[] Ways = [("away", 0), ("right", 90), ("towards", 180), ("left", 270)];

    public static readonly ValueKind<double> Kind = Kinds.Angle with
    {
        Noun = "a way downhill",
        Example = "left",
        Read = Read,
        Write = degrees => Array.Find(Ways, way => way.Degrees == degrees).Word ?? $"{NumberText.Write(degrees)}°",
        Pattern = () => $"({string.Join('|', Ways.Select(way => way.Word))}|{Patterns.Quantity(UnitDimension.Angle)})",
        AlsoWords = Array.ConvertAll(Ways, way => way.Word),
        ReadMeasure = Read,
        TakesUncertainty = false,
    };

    private static Reading<double> Read(string text)
    {
        var way = Array.Find(Ways, way => way.Word == text.Trim());
        return way.Word is not null ? Reading<double>.Good(way.Degrees)
            : text.Any(char.IsAsciiDigit) ? NumberText.Quantity(text, UnitDimension.Angle)
            : Reading<double>.Bad($"'{text}' is no way downhill.", $"Choose one of: {string.Join(", ", Ways.Select(known => known.Word))}, as the camera looks; or write an angle from away towards the right, for example '30°'.");
    }
}
