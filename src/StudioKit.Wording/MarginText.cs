using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Planning;

namespace StudioKit.Wording;

/// <summary>White margins in words.</summary>
public static class MarginText
{
    /// <summary>What is said of the sheet right over a pipe.</summary>
    public const string OverPipe = "over a pipe of the frame";

    /// <summary>What that means for the picture.</summary>
    public const string DarkOverPipe = OverPipe + ": dark there at any power";

    // So far under clipping, as behind a rail, the number says nothing more [stops].
    private const double Dark = -9.9;

    /// <summary>A margin, e.g. <c>+0.52 stop</c>; <c>dark</c> where its number says nothing.</summary>
    public static string Of(Stops margin) => margin.Value < Dark ? "dark" : $"{margin.Nominal} stop";

    /// <summary>The margin of a place of a panel, and whether it lies over a pipe.</summary>
    /// <exception cref="ArgumentNullException">There is no panel.</exception>
    public static string At(PanelLightPlan light, PanelPlace place, Stops margin)
    {
        ArgumentNullException.ThrowIfNull(light);
        return Of(margin) + (light.IsOverPipe(place) ? $", {OverPipe}" : "");
    }

    /// <summary>A margin in a map of numbers, to a tenth of a stop.</summary>
    public static string InMap(PanelLightPlan light, PanelPlace place, Stops margin)
    {
        ArgumentNullException.ThrowIfNull(light);
        return light.IsOverPipe(place) ? "pipe" : margin.Value < Dark ? "dark" : FormattableString.Invariant($"{margin.Value:+0.0;-0.0;0.0}");
    }
}
