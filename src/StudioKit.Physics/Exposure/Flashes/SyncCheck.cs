namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>What came of comparing a shutter speed with the flash sync.</summary>
/// <param name="IsWithin">Whether the flash lights the whole frame.</param>
/// <param name="Over">Stops by which the shutter is too fast; 0 within the limit.</param>
/// <param name="WaysOut">Sentences that say what to set instead; none within the limit.</param>
public sealed record SyncCheck(bool IsWithin, Stops Over, IReadOnlyList<string> WaysOut);
