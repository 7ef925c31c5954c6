using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>A power as the dial of a flash shows it, in both ways of the trade: <c>1/6.4</c> and <c>1/8 + 1/3</c>.</summary>
/// <remarks>1/8 + 1/3 is one third of a stop brighter than 1/8. A power that lies on no click is written as it is.</remarks>
/// <param name="Power">The power.</param>
/// <param name="Step">Step of the dial.</param>
public readonly record struct DialMark(FlashPower Power, PowerStep Step)
{
    private const double RoundOff = 1e-9;

    /// <summary>As one fraction with a decimal, e.g. <c>1/6.4</c>.</summary>
    public string AsOneFraction => PowerText.Decimal(Power.Fraction, Step);

    /// <summary>As the full stop below and what is added to it, e.g. <c>1/8 + 1/3</c>; full stops are one fraction, e.g. <c>1/8</c>.</summary>
    public string InFullStops => PowerText.InFullStops(Power.Fraction, Step) ?? AsOneFraction;

    /// <summary>Both, e.g. <c>1/6.4 (1/8 + 1/3)</c>; full stops have only one form.</summary>
    public string Nominal => AsOneFraction == InFullStops ? AsOneFraction : $"{AsOneFraction} ({InFullStops})";

    /// <summary>Clicks from full power down to this one, where the dial has it, and else between two [1]; ≥ 0.</summary>
    [Source("CommonPractice", "clicks are counted from full power down")]
    public double ClicksBelowFull => Step.ClicksPerStop() * Power.StopsBelowFull;

    /// <summary>The next click that gives more light. Full power is the end of the dial and stays.</summary>
    [Source("CommonPractice", "clicks are counted from full power down")]
    public DialMark Brighter => At(Math.Max(0, Math.Ceiling(ClicksBelowFull - PowerText.OnTheClick) - 1));

    /// <summary>The next click that gives less light, whether or not the dial goes down that far.</summary>
    [Source("CommonPractice", "clicks are counted from full power down")]
    public DialMark Darker => At(Math.Floor(ClicksBelowFull + PowerText.OnTheClick) + 1);

    /// <summary>The darkest click that is not darker than a power.</summary>
    /// <param name="power">The power.</param>
    /// <param name="step">Step of the dial.</param>
    [Source("CommonPractice", "clicks are counted from full power down")]
    public static DialMark NotUnder(FlashPower power, PowerStep step)
    {
        var between = new DialMark(power, step);
        return between.At(Math.Floor(between.ClicksBelowFull + RoundOff));
    }

    /// <inheritdoc/>
    public override string ToString() => Nominal;

    private DialMark At(double click) => this with { Power = FlashPower.FromStopsBelowFull(click / Step.ClicksPerStop()) };
}
