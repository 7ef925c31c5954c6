using StudioKit.Field.Calibration;
using StudioKit.Kits;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Measured corrections in words.</summary>
internal static class CorrectionTelling
{
    /// <summary>What a kept correction holds.</summary>
    public static string Of(KitCorrection correction) => correction switch
    {
        { CorrectsFigures: true, ToneCurve: not null } => FormattableString.Invariant($"measured {correction.Date:yyyy-MM-dd}: figures of the kit and the camera's tone curve"),
        { CorrectsFigures: true } => FormattableString.Invariant($"measured {correction.Date:yyyy-MM-dd}: figures of the kit"),
        { ToneCurve: not null } => FormattableString.Invariant($"measured {correction.Date:yyyy-MM-dd}: the camera's tone curve"),
        _ => FormattableString.Invariant($"measured {correction.Date:yyyy-MM-dd}: nothing is corrected"),
    };

    /// <summary>What a new correction comes to.</summary>
    public static IReadOnlyList<string> Lines(KitSpec kit, LadderCorrection made, IReadOnlyList<CardPowerChange> cards) =>
    [
        .. made.Correction.Values(kit).Select(value => $"{value.Quantity}: {CorrectionText.Value(value)}"),
        FormattableString.Invariant($"{cards.Count(card => card.IsChanged)} of {cards.Count} powers on the cards change."),
        .. made.Result.Residuals.Where(residual => residual.Disagrees).Select(residual => $"{residual.Reading.Name} disagrees with the others."),
        .. made.Result.Caveats,
    ];
}
