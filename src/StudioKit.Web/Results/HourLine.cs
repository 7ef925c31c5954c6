namespace StudioKit.Web.Results;

/// <summary>One hour of the day.</summary>
/// <param name="Time">The time on the clock there.</param>
/// <param name="Sun">Where the sun stands, and how high.</param>
/// <param name="Shade">Where shade falls to.</param>
/// <param name="Light">What light to expect in sun, under cloud and in shade.</param>
/// <param name="SetUps">What can be photographed then.</param>
public sealed record HourLine(string Time, string Sun, string Shade, string Light, string SetUps);
