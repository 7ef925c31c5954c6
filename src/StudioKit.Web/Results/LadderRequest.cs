namespace StudioKit.Web.Results;

/// <summary>Asks what a power ladder measures.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="FileName">Its file's name.</param>
/// <param name="SetUp">Set-up that it was taken with.</param>
/// <param name="Framing">Framing that it was taken with.</param>
/// <param name="PitchDegrees">Camera angle under the horizontal.</param>
/// <param name="Rungs">The frames with their powers.</param>
/// <param name="Day">Day of frames that do not name their own, as yyyy-MM-dd.</param>
public sealed record LadderRequest(string Text, string FileName, string SetUp, string Framing, double PitchDegrees, IReadOnlyList<LadderRung> Rungs, string Day);
