using System.Globalization;
using StudioKit.Physics;

namespace StudioKit.Kits.Exploring;

/// <summary>Values from one to another in steps, written in one unit.</summary>
public static class DesignRange
{
    /// <summary>Most values of a range [1].</summary>
    public const int Most = 100;

    /// <summary>The values of a choice's range, each as a person would type it.</summary>
    /// <param name="choice">A choice with a first value, a last one and a step.</param>
    /// <returns>The values; none where they are no range.</returns>
    /// <exception cref="ArgumentNullException">There is no choice.</exception>
    public static ValueList<string>? Values(DesignChoiceSpec choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return Problem(choice) is null && Read(choice.From!) is { } from && Read(choice.To!) is { } to && Read(choice.Step!) is { } step
            ? [.. Enumerable.Range(0, Count(from.Number, to.Number, step.Number)).Select(place => Written(from.Number + (place * step.Number), from.Unit))]
            : null;
    }

    /// <summary>What is wrong with a choice's range; none where nothing is.</summary>
    internal static string? Problem(DesignChoiceSpec choice) => (Read(choice.From ?? ""), Read(choice.To ?? ""), Read(choice.Step ?? "")) switch
    {
        ({ } from, { } to, { } step) when from.Unit != to.Unit || from.Unit != step.Unit => "'from', 'to' and 'step' of a range are in different units.",
        (_, _, { Number: <= 0 }) => "The step of a range is above nought.",
        ({ } from, { } to, _) when to.Number < from.Number => "A range begins at its smaller value.",
        ({ } from, { } to, { } step) when (to.Number - from.Number) / step.Number > Most - 1 => $"The range has more than {Most} values.",
        (null, _, _) or (_, null, _) or (_, _, null) => "A range has 'from', 'to' and 'step', each a number with its unit.",
        _ => null,
    };

    private static int Count(decimal from, decimal to, decimal step) => (int)((to - from) / step) + 1;

    private static string Written(decimal number, string unit) => string.Create(CultureInfo.InvariantCulture, $"{number:0.############}{unit}");

    private static (decimal Number, string Unit)? Read(string text)
    {
        var line = text.Trim();
        var digits = line.Length - line.TrimStart("+-0123456789.".ToCharArray()).Length;
        return digits is > 0 and <= 12 && decimal.TryParse(line.AsSpan(0, digits), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? (number, line[digits..])
            : null;
    }
}
