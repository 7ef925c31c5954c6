using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Expected;

namespace StudioKit.Planning.Advising;

/// <summary>A test frame beside the plan of what was set for it.</summary>
/// <param name="Below">The flash of the sheet, as the exposure has it.</param>
/// <param name="Placed">What was set otherwise than in the kit: the margin aimed at, the place of the flash.</param>
/// <param name="There">The exposure planned with that.</param>
/// <param name="Expected">Margin of the darkest visible place that the plan expects for what was set.</param>
/// <param name="Gives">Light against what the plan expects; none where the frame is white all over.</param>
/// <param name="LessEven">Stops by which the background is less even than planned; 0 where it is as even.</param>
internal sealed record SeenFrame(LightPlan Below, ValueList<KitChange> Placed, ExposurePlan There, Stops Expected, Stops? Gives, Stops LessEven)
{
    // Sixteen times the light is no error of a kit's figures: something was set otherwise.
    private const double MostOff = 4;

    // Noise and the grain of a map make so much of a difference (common practice, no source).
    private const double AsEven = 0.15;

    /// <summary>Whether it lies further from the plan than any kit's figures are wrong.</summary>
    public bool IsSetOtherwise => Gives is { } off && Math.Abs(off.Value) > MostOff;

    /// <summary>A frame of an exposure; none where no flash lights a sheet, or the plan finds no light there.</summary>
    public static SeenFrame? Of(Replanner replanner, ExposurePlan now, TestedFrame frame)
    {
        if (now.Lights.FirstOrDefault(light => light.Role.IsBackground()) is not { } below)
        {
            return null;
        }

        ValueList<KitChange> placed = [.. PlacedIn(now, frame, below)];
        if (replanner.Plan(now, placed) is not { WhiteMargin: { } planned, BrightestMargin: { } brightest } there)
        {
            return null;
        }

        var expected = planned + Shift(there, frame.Shot) + frame.ViewAboveDarkest;
        return new SeenFrame(below, placed, there, expected, frame.Darkest is { } darkest ? darkest - expected : null, LessEvenThan(frame, brightest - planned));
    }

    /// <summary>Margin of the darkest visible place over all views when the frame's light falls on the sheet, for whatever is set.</summary>
    public Stops MarginAt(ShotSettings shot) => There.WhiteMargin!.Value + Shift(There, shot) + (Gives ?? default);

    /// <summary>The exposure as it was set, with the margins that the frame shows.</summary>
    public ExposurePlan AsShot(ShotSettings shot)
    {
        var darkest = MarginAt(shot);
        return There with
        {
            Aperture = shot.Aperture ?? There.Aperture,
            Iso = shot.Iso ?? There.Iso,
            Lights = [.. There.Lights.Select(light => light.Role == There.Lights[0].Role ? light with { Power = shot.Power } : light)],
            WhiteMargin = darkest,
            BrightestMargin = darkest + (There.BrightestMargin!.Value - There.WhiteMargin!.Value) + LessEven,
        };
    }

    /// <summary>The kit as the frame shows it: what its flash gives, where it stood, and a veil limit that knows the brightest place.</summary>
    public ValueList<KitChange> Given(Replanner replanner, Stops light) => [new KitChange.Gives(Below.Flash, light), .. Placed, .. Strict(replanner)];

    /// <summary>A promise with the frame's own brightest place in it.</summary>
    public Promise Seen(Promise promise) => LessEven.Value > 0
        ? promise with { BrightestMargin = promise.BrightestMargin + LessEven, HighestMargin = promise.HighestMargin + LessEven }
        : promise;

    // A plan knows its own brightest place only: where the frame's is brighter, the limit is that much stricter.
    private IEnumerable<KitChange> Strict(Replanner replanner) => LessEven.Value > 0
        ? [new KitChange.VeilLimit(There.SetUp, Veil.LimitWithRoom(replanner.SetUpOf(There).VeilLimit, LessEven))]
        : [];

    // Whatever makes it so is not known, and is taken to stay as it is: a lens that darkens its corners, a flash that stands beside the middle.
    private static Stops LessEvenThan(TestedFrame frame, Stops planned) =>
        frame.Spread is { } seen && seen.Value > planned.Value + AsEven ? seen - planned : default;

    private static IEnumerable<KitChange> PlacedIn(ExposurePlan now, TestedFrame frame, LightPlan below)
    {
        if (frame.Target is { } target)
        {
            yield return new KitChange.TargetMargin(now.SetUp, target);
        }

        if (frame.Shot.Distance is { } distance && Math.Abs((distance - below.Distance).Millimeters) > 1)
        {
            yield return new KitChange.Move(now.SetUp, below.Place, distance);
        }
    }

    // Stops by which what was set gives the sensor more than what is planned.
    private static Stops Shift(ExposurePlan planned, ShotSettings shot)
    {
        var power = shot.Power.Fraction / planned.Lights.First(light => light.Role.IsBackground()).Power.Fraction;
        var speed = (shot.Iso ?? planned.Iso).Value / planned.Iso.Value;
        var opening = (shot.Aperture ?? planned.Aperture).Value / planned.Aperture.Value;
        return new Stops(Math.Log2(power * speed / (opening * opening)));
    }
}
