using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Planning.Cautions;

/// <summary>A flash that somebody or something can come too near to, in its place under the sheet.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="SetUps">Set-ups that light with it there.</param>
/// <param name="BelowPanel">Panel's underside down to its window.</param>
/// <param name="Support">What holds it; none where there is no frame.</param>
public sealed record FlashUnderSheet(string Flash, IReadOnlyList<string> SetUps, Length BelowPanel, FlashSupport? Support);
