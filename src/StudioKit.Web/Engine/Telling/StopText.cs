using StudioKit.Physics.Exposure;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Margins in stops.</summary>
internal static class StopText
{
    /// <summary>From the darkest to the brightest. Whole stops and thirds stay on one line: +1 at its end and 1/3 on the next would be read as two figures.</summary>
    public static string Of(Stops darkest, Stops brightest) => $"{Figure(darkest)} to {Figure(brightest)}\u00a0stop";

    private static string Figure(Stops margin) => margin.Nominal.Replace(' ', '\u00a0');
}
