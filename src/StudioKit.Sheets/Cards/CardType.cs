namespace StudioKit.Sheets.Cards;

/// <summary>Sizes of type on a card.</summary>
/// <param name="Settings">Most for the camera settings [pt].</param>
/// <param name="Flashes">Most for power and distance [pt].</param>
/// <param name="Check">The check [pt].</param>
/// <param name="Remedies">If this, turn that [pt].</param>
internal sealed record CardType(double Settings, double Flashes, double Check, double Remedies);
