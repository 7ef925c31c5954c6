using StudioKit.Field.Pictures;
using StudioKit.Physics.Optics;
using StudioKit.Planning;

namespace StudioKit.Field.Log.Matching;

/// <summary>Finds the framing and the set-up of a kit that a picture was taken in, from its sidecar, lens, scale and settings.</summary>
/// <param name="plan">Plan of the kit.</param>
public sealed class FramingMatcher(Plan plan)
{
    // A lens's focal length is rounded on the barrel and in the file alike.
    private const double FocalLengthTolerance = 0.03;

    // A hand does not set a magnification closer than this, and framings of one lens lie farther apart; common practice, no source.
    private const double MagnificationTolerance = 0.12;

    // Dials go by thirds of a stop, so half of one tells two marks apart.
    private const double StopTolerance = 1.0 / 6;

    /// <summary>Finds framing and set-up.</summary>
    /// <param name="picture">The picture.</param>
    public FramingMatch Match(LoggedPicture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var reached = plan.Framings.Where(framing => framing.Reached).ToList();
        if (picture.Scale is { Framing.Length: > 0 } scale && scale.Kit == plan.Kit.Name && reached.Find(framing => framing.Name == scale.Framing) is { } named)
        {
            return Found(FramingMatchKind.Sidecar, named, picture.Settings);
        }

        var (kind, fitting) = (FramingMatchKind.Lens, OfLens(reached, picture.Settings));
        if (fitting.Count > 1 && MagnificationOf(picture) is { } magnification)
        {
            (kind, fitting) = (FramingMatchKind.Scale, Nearest(fitting, magnification));
        }

        if (fitting.Count > 1 && CardsOf(fitting, picture.Settings).Select(card => card.Framing.Name).Distinct(StringComparer.Ordinal).ToList() is { Count: > 0 } names)
        {
            (kind, fitting) = (FramingMatchKind.Settings, [.. fitting.Where(framing => names.Contains(framing.Name, StringComparer.Ordinal))]);
        }

        return fitting switch
        {
            [] => new FramingMatch(FramingMatchKind.Unknown, "", "", []),
            [var only] => Found(kind, only, picture.Settings),
            _ => new FramingMatch(FramingMatchKind.Several, "", SetUpOf(fitting, picture.Settings), [.. fitting.Select(framing => framing.Name)]),
        };
    }

    private FramingMatch Found(FramingMatchKind kind, FramingPlan framing, FrameSettings settings) => new(kind, framing.Name, SetUpOf([framing], settings), []);

    // By name where the file bears one of the kit's, else by focal length; a file that tells of neither leaves all of them.
    private List<FramingPlan> OfLens(List<FramingPlan> framings, FrameSettings settings)
    {
        if (plan.Kit.Lenses.FirstOrDefault(lens => string.Equals(lens.Name, settings.Lens, StringComparison.OrdinalIgnoreCase)) is { } named)
        {
            return [.. framings.Where(framing => framing.Lens == named.Name)];
        }

        return settings.FocalLength is not { } focal ? framings : [.. framings.Where(framing => plan.Kit.Lenses.Any(
            lens => lens.Name == framing.Lens && Math.Abs((lens.FocalLength / focal) - 1) <= FocalLengthTolerance))];
    }

    // A picture that is not as large as the camera's may have been cropped or made smaller, which mean different pixels.
    private double? MagnificationOf(LoggedPicture picture)
    {
        var camera = plan.Kit.Camera;
        var isWhole = picture.Pixels.Longer == Math.Max(camera.PixelsWide, camera.PixelsHigh) && picture.Pixels.Shorter == Math.Min(camera.PixelsWide, camera.PixelsHigh);
        return picture.ValidScale is not { } scale
            ? null
            : scale.Magnification ?? (isWhole ? PixelScale.PixelPitch(camera.SensorWidth.Meters, camera.PixelsWide) / (scale.MicrometresPerPixel * 1e-6) : null);
    }

    private static List<FramingPlan> Nearest(List<FramingPlan> framings, double magnification)
    {
        var close = framings.Where(framing => Off(framing, magnification) <= MagnificationTolerance).ToList();
        return close.Count < 2 ? close : [.. close.Where(framing => Off(framing, magnification) <= close.Min(other => Off(other, magnification)) + 1e-9)];
    }

    private static double Off(FramingPlan framing, double magnification) => Math.Abs(Math.Log(framing.Magnification.Value / magnification));

    private string SetUpOf(List<FramingPlan> framings, FrameSettings settings) =>
        CardsOf(framings, settings).Select(card => card.SetUp).Distinct(StringComparer.Ordinal).ToList() is [var only] ? only : "";

    // The card's f-number stays; ISO speed and power are turned in the field, so they only tell cards of one f-number apart.
    private List<ExposurePlan> CardsOf(List<FramingPlan> framings, FrameSettings settings)
    {
        var cards = settings.Aperture is null ? [] : plan.Exposures.Where(card => framings.Exists(framing => framing.Name == card.Framing.Name) && IsLikely(card, settings)).ToList();
        var exact = cards.Where(card => Stops(settings.MarkedIso?.Value, card.Iso.Value) <= StopTolerance && Stops(settings.Shutter?.Seconds, card.Shutter.Seconds) <= StopTolerance).ToList();
        return exact.Count > 0 ? exact : cards;
    }

    private bool IsLikely(ExposurePlan card, FrameSettings settings)
    {
        var aperture = plan.Kit.Camera.ReportsEffectiveFNumber ? card.EffectiveAperture : card.Aperture;
        return 2 * Stops(settings.MarkedAperture?.Value, aperture.Value) <= StopTolerance && Stops(settings.Shutter?.Seconds, card.Shutter.Seconds) <= 1;
    }

    // What the file does not tell contradicts nothing.
    private static double Stops(double? read, double planned) => read is { } value ? Math.Abs(Math.Log2(value / planned)) : 0;
}
