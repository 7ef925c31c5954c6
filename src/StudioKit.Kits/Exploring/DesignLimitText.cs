using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Exploring;

/// <summary>Limits of designs as people write them: a measure and an amount with its unit, e.g. <c>mass 3 kg</c>.</summary>
public static class DesignLimitText
{
    internal const string Example = "mass 3 kg";

    private const double JoulesPerWattHour = 3600;

    private static readonly string[] Words = Array.ConvertAll(Enum.GetNames<DesignMeasure>(), MemberText.Hyphenated);

    /// <summary>Reads a limit.</summary>
    /// <param name="text">A measure and an amount, e.g. <c>white-margin +1/3 stop</c>: at most so much of what is to be little, at least so much of what is to be much.</param>
    /// <param name="value">The limit; none where the text is none.</param>
    /// <param name="problem">What is wrong with the text, and what would be accepted.</param>
    public static bool TryRead(string text, out DesignLimit? value, out string problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        var reading = Read(text);
        (value, problem) = (reading.IsGood ? reading.Value : null, reading.IsGood ? "" : $"{reading.Problem} {reading.Hint}".TrimEnd());
        return reading.IsGood;
    }

    /// <summary>Reads the name of a measure, e.g. <c>white-margin</c>.</summary>
    /// <param name="word">The name.</param>
    /// <param name="problem">What is wrong with it, and what would be accepted.</param>
    /// <returns>The measure; none where there is no such one.</returns>
    public static DesignMeasure? Measure(string word, out string problem)
    {
        ArgumentNullException.ThrowIfNull(word);
        var reading = WordText.Choice(word, "a measure of designs", Words);
        problem = reading.IsGood ? "" : $"{reading.Problem} {reading.Hint}".TrimEnd();
        return reading.IsGood ? (DesignMeasure)reading.Value : null;
    }

    internal static Reading<DesignLimit> Read(string text)
    {
        var line = text.Trim();
        var gap = line.IndexOf(' ', StringComparison.Ordinal);
        var word = gap < 0 ? line : line[..gap];
        return WordText.Choice(word, "a measure of designs", Words).Then(place => gap < 0
            ? Reading<DesignLimit>.Bad($"'{text}' has no amount.", $"Write the limit after the measure, for example '{Example}'.")
            : Amount((DesignMeasure)place, line[(gap + 1)..].Trim()).Then(amount => new DesignLimit((DesignMeasure)place, amount, line)));
    }

    private static Reading<double> Amount(DesignMeasure measure, string text) => measure switch
    {
        DesignMeasure.Mass => NumberText.Quantity(text, UnitDimension.Mass),
        DesignMeasure.Price => NumberText.Bare(text, "a price", "40"),
        DesignMeasure.WhiteMargin => LightText.StopCount(text),
        DesignMeasure.FirstWhite => LightText.Ratio(text),
        DesignMeasure.Energy => NumberText.Quantity(text, UnitDimension.Energy).Then(joules => joules / JoulesPerWattHour),
        DesignMeasure.PackedLength or DesignMeasure.Depth => NumberText.Quantity(text, UnitDimension.Length),
        DesignMeasure.Smear => NumberText.Quantity(text, UnitDimension.Length).Then(millimetres => millimetres * 1000),
        DesignMeasure.Wind => WindText.Read(text),
        _ => NumberText.Whole(text).Then(number => (double)number),
    };
}
