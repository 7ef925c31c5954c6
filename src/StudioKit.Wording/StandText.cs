using System.Globalization;
using StudioKit.Kits.Lighting;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning;
using StudioKit.Planning.Standing;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Where a light about the subject stands, in words: by the clock, in degrees and in centimetres.</summary>
public static class StandText
{
    private const double Overhead = 85;

    /// <summary>The whole place, e.g. <c>9 o'clock, 45° up: 28 cm left, 28 cm higher</c>.</summary>
    /// <exception cref="ArgumentNullException">There is no place.</exception>
    public static string Where(LightStandPlan stand)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return $"{Direction(stand.From)}: {Sides(stand)}";
    }

    /// <summary>The whole place where room is short, e.g. <c>Above: 35 cm, 9 o'clock, 45° up, in the free hand.</c></summary>
    /// <param name="stand">The light.</param>
    /// <param name="withHolder">Whether there is room for what holds it.</param>
    /// <exception cref="ArgumentNullException">There is no place.</exception>
    public static string InShort(LightStandPlan stand, bool withHolder)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return $"{RoleText.Title(stand.Role)}: {DistanceFormat.Centimetres(stand.Distance)}, {Direction(stand.From)}{(withHolder ? ", " + Held(stand) : "")}.";
    }

    /// <summary>By the clock that lies about the subject, six towards the camera, and how high.</summary>
    public static string Direction(LightDirection from) => from.Elevation.Degrees >= Overhead ? "straight above" : $"{Clock(from)}, {Height(from.Elevation)}";

    /// <summary>The clock alone, to the half hour, e.g. <c>half past 7</c>.</summary>
    public static string Clock(LightDirection from)
    {
        var halves = (int)Math.Round(from.Hour * 2);
        var hour = (((halves / 2) + 11) % 12) + 1;
        return halves % 2 == 0 ? $"{Figure(hour)} o'clock" : $"half past {Figure(hour)}";
    }

    /// <summary>As a kit writes it, e.g. <c>'azimuth: -90°', 'elevation: 45°'</c>.</summary>
    public static string Keys(LightDirection from) => $"'azimuth: {Figure(from.Azimuth.Degrees)}°', 'elevation: {Figure(from.Elevation.Degrees)}°'";

    /// <summary>Steps from the subject, those under half a centimetre left out.</summary>
    public static string Sides(LightStandPlan stand)
    {
        ArgumentNullException.ThrowIfNull(stand);
        string[] steps = [.. new[] { Step(stand.Right, "right", "left"), Step(stand.Back, "behind", "before"), Step(stand.Up, "higher", "lower") }.Where(step => step.Length > 0)];
        return string.Join(", ", steps);
    }

    /// <summary>What holds it.</summary>
    public static string Held(LightStandPlan stand)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return (stand.Holder, stand.WithinReach) switch
        {
            ({ } holder, _) => stand.HeldBy switch
            {
                HolderKind.Stand when stand.ReachNeeded.Meters > 0.005 => $"on {holder}, boom out {DistanceFormat.Centimetres(stand.ReachNeeded)}, {DistanceFormat.Centimetres(stand.OverGround)} over the ground",
                HolderKind.Stand or HolderKind.Ground => $"on {holder}, {DistanceFormat.Centimetres(stand.OverGround)} over the ground",
                HolderKind.Hand => $"in {holder}, {DistanceFormat.Centimetres(stand.ReachNeeded)} from the camera",
                _ => $"on {holder}, {DistanceFormat.Centimetres(stand.ReachNeeded)} from where it is fastened",
            },
            (null, true) => "in the free hand",
            _ => $"held by a helper: {DistanceFormat.Centimetres(stand.ReachNeeded)} from the camera",
        };
    }

    /// <summary>How soft it is, in words, degrees and stops.</summary>
    public static string Soft(LightStandPlan stand)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return $"{Word(stand.Softness)}, {Angles(stand)}, {Shadow(stand)}";
    }

    /// <summary>The angles that it fills.</summary>
    public static string Angles(LightStandPlan stand)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return $"{Whole(stand.AngleAcross)} × {Whole(stand.AngleUp)}";
    }

    /// <summary>A span of stops, to the tenth.</summary>
    public static string Span(double least, double most)
    {
        var (low, high) = (least.ToString("0.0", CultureInfo.InvariantCulture), most.ToString("0.0", CultureInfo.InvariantCulture));
        return low == high ? low : $"{low} to {high}";
    }

    /// <summary>How deep its shadow is.</summary>
    public static string Shadow(LightStandPlan stand)
    {
        ArgumentNullException.ThrowIfNull(stand);
        return stand.ShadowDepth is { } depth ? $"shadow {depth.Value.ToString("0.0", CultureInfo.InvariantCulture)} stops deep" : "shadow black";
    }

    /// <summary>A word for how soft it is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A softness without a word.</exception>
    public static string Word(Softness softness) => softness switch
    {
        Softness.Hard => "hard",
        Softness.FairlyHard => "fairly hard",
        Softness.Soft => "soft",
        Softness.VerySoft => "very soft",
        _ => throw new ArgumentOutOfRangeException(nameof(softness), softness, "A softness without a word."),
    };

    private static string Height(Angle elevation) => Math.Round(elevation.Degrees) switch
    {
        0 => "level",
        > 0 => $"{Whole(elevation)} up",
        _ => $"{Whole(-elevation)} down",
    };

    private static string Step(Length by, string positive, string negative) =>
        Math.Abs(by.Centimeters) < 0.5 ? "" : $"{DistanceFormat.Centimetres(by.Meters < 0 ? -by : by)} {(by.Meters < 0 ? negative : positive)}";

    private static string Whole(Angle angle) => $"{Figure(Math.Round(angle.Degrees))}°";

    private static string Figure(double value) => value.ToString("0", CultureInfo.InvariantCulture);
}
