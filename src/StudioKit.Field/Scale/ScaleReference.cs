using StudioKit.Field.Pictures;
using StudioKit.Kits.Quantities;
using StudioKit.Physics;
using StudioKit.Physics.Sources;
using StudioKit.Planning;

namespace StudioKit.Field.Scale;

/// <summary>A scale that is known of the whole picture that a camera gives, or of one taken at the same focus.</summary>
/// <param name="FieldWidth">Longer side of what the whole picture shows [m]; &gt; 0.</param>
/// <param name="FullPixels">Pixels of the whole picture; none where nothing tells.</param>
/// <param name="Basis">What it was worked out from.</param>
public sealed record ScaleReference(double FieldWidth, PixelDimensions? FullPixels, ScaleBasis Basis)
{
    // Marks such as 1:2 stand on the barrel to two figures (common practice, no source).
    private const double RoundedMark = 0.01;

    /// <summary>The scale that sensor and magnification give.</summary>
    /// <param name="sensorWidth">Longer side of the sensor [m]; &gt; 0.</param>
    /// <param name="magnification">Image over object size m [1]; &gt; 0.</param>
    /// <param name="fullPixels">Pixels of the whole sensor; none where nothing but the picture tells.</param>
    /// <returns>What is seen: sensor over magnification.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "image over object size")]
    public static ScaleReference OfFraming(double sensorWidth, double magnification, PixelDimensions? fullPixels) => new(
        Guard.Positive(sensorWidth) / Guard.Positive(magnification),
        fullPixels,
        new ScaleBasis.Framed { SensorWidth = sensorWidth, Magnification = magnification, CameraPixels = fullPixels });

    /// <summary>The scale of a planned framing, with the plan's uncertainty.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="framing">Name of the framing.</param>
    /// <param name="typedPixels">Pixels of the whole sensor as typed; else those of the kit, where it gives them.</param>
    /// <returns>The scale, or what there is to choose from.</returns>
    /// <remarks>
    /// A magnification is set by a mark on the lens, which is rounded, or by the planned distance from glass to subject. An error d of that
    /// distance changes the magnification by the share m·d/f, as the object distance of a lens is f·(1 + 1/m); which of the two was done is not
    /// known, so the larger counts.
    /// </remarks>
    [Source("GerrardBurch1975", "system matrix: magnification of conjugate planes, differentiated")]
    public static FieldResult<ScaleReference> OfPlan(Plan plan, string framing, PixelDimensions? typedPixels)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var found = Find(plan, framing);
        if (!found.IsSound)
        {
            return FieldResult<ScaleReference>.Refused(found.Diagnostics);
        }

        var (camera, planned, m) = (plan.Kit.Camera, found.Value, found.Value.Magnification.Value);
        var fullPixels = typedPixels ?? (plan.Defaults.Any(used => used.Path == "camera.pixels") ? null : new PixelDimensions(camera.PixelsWide, camera.PixelsHigh));
        var reference = OfFraming(camera.SensorWidth.Meters, m, fullPixels);
        return reference with
        {
            FieldHeight = camera.SensorHeight.Meters / m,
            Basis = ((ScaleBasis.Framed)reference.Basis) with { Kit = plan.Kit.Name, Framing = planned.Name },
            RelativeUncertainty = Math.Max(RoundedMark, m * planned.WorkingDistanceUncertainty.Meters / planned.FocalLength.Meters),
        };
    }

    /// <summary>The scale read off a rule in another picture at the same focus.</summary>
    /// <param name="rule">What was read.</param>
    /// <param name="file">File name of that picture.</param>
    /// <param name="pixels">Its size.</param>
    public static ScaleReference OfRule(RuleMeasurement rule, string file, PixelDimensions pixels)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return new ScaleReference(rule.MicrometresPerPixel * 1e-6 * pixels.Longer, pixels, new ScaleBasis.Rule(file, pixels))
        {
            RelativeUncertainty = rule.RelativeUncertainty,
        };
    }

    private static FieldResult<FramingPlan> Find(Plan plan, string framing)
    {
        var reached = plan.Framings.Where(candidate => candidate.Reached).ToList();
        if ((framing.Length == 0 && reached.Count == 1 ? reached[0] : reached.Find(candidate => candidate.Name == framing)) is { } found)
        {
            return found;
        }

        var names = $"There are: {string.Join(", ", reached.Select(candidate => $"'{candidate.Name}'"))}.";
        var unreached = plan.Framings.FirstOrDefault(candidate => candidate.Name == framing);
        return framing.Length == 0
            ? new FieldDiagnostic("FLD207", plan.Kit.Name, "Which framing?", names)
            : unreached is null
                ? new FieldDiagnostic("FLD206", plan.Kit.Name, $"The kit has no framing '{framing}'.", NearestName.Of(framing, reached.Select(candidate => candidate.Name)) is { } nearest ? $"Did you mean '{nearest}'?" : names)
                : new FieldDiagnostic("FLD206", plan.Kit.Name, $"The framing '{framing}' is out of reach.", names);
    }

    /// <summary>One standard deviation over the value [1]; none where it is not known.</summary>
    public double? RelativeUncertainty { get; init; }

    /// <summary>Shorter side of what the whole picture shows [m]; none where it is not known.</summary>
    public double? FieldHeight { get; init; }
}
