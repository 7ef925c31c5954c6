using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>Where the lights about the subject stand, and what follows from that.</summary>
/// <param name="kit">The kit.</param>
/// <param name="framings">Its framings.</param>
/// <param name="light">Its studio's light.</param>
internal sealed class LightStandPlanner(KitSpec kit, IReadOnlyList<PlannedFraming> framings, StudioLight? light)
{
    // A power falls on a click of the dial, half of one to either side of what was asked.
    private static readonly Stops HalfClick = new(LightFaults.Click.Value / 2);

    private static readonly HolderSpec FreeHand = new() { Name = "", Kind = HolderKind.Hand };

    /// <summary>Every light about the subject of one exposure.</summary>
    public IReadOnlyList<LightStandPlan> Of(SetUpSpec setUp, ExposurePlan exposure)
    {
        var framing = framings.First(one => one.Plan.Name == exposure.Framing.Name);
        var scene = StandScene.Of(kit, setUp, framing, light);
        var camera = LightingCases.Camera(kit, setUp, framing, exposure.Aperture) with { Iso = exposure.Iso };
        List<Lit> lights = [.. exposure.Lights.Where(lit => setUp.Lights[lit.Place].From is not null).Select(lit => Stood(scene, lit, setUp.Lights[lit.Place], camera))];
        return [.. lights.Select(lit => Of(scene, exposure, lit, lights))];
    }

    /// <summary>Whether nothing is wrong with a light of an exposure where another direction or holder would have it.</summary>
    /// <param name="scene">Subject and camera.</param>
    /// <param name="exposure">The exposure as it is planned.</param>
    /// <param name="place">The light's place in the set-up's list.</param>
    /// <param name="spec">The light with what is changed.</param>
    /// <remarks>Its power is taken to follow, so that its level on the subject stays; looks no further than the first fault.</remarks>
    internal static bool IsClear(StandScene scene, ExposurePlan exposure, int place, LightSpec spec)
    {
        var camera = LightingCases.Camera(scene.Kit, scene.SetUp, scene.Framing, exposure.Aperture) with { Iso = exposure.Iso };
        Lit Changed(LightPlan plan) => plan.Place == place ? Stood(scene, plan, spec, camera) : Stood(scene, plan, scene.SetUp.Lights[plan.Place], camera);
        var lit = Changed(exposure.Lights.First(light => light.Place == place));
        return !FaultsOf(scene, exposure, lit, HalfClick, () => [.. exposure.Lights.Where(light => scene.SetUp.Lights[light.Place].From is not null && light.Place != place).Select(Changed), lit]).Any();
    }

    private static Lit Stood(StandScene scene, LightPlan plan, LightSpec spec, CameraCase camera)
    {
        var standing = StandingLight.Of(scene.Kit, spec, scene.Subject);
        var loss = LightingCases.DirectionLoss(scene.SetUp, spec);
        return new Lit(plan, spec, standing, loss, new(() => LightGlow.Of(scene, standing, plan.Budget.Total - loss + LensShade.Loss(scene.Kit, scene.SetUp, scene.Framing, spec), camera)));
    }

    private static (HolderSpec? Named, HeldLight Held) HolderOf(StandScene scene, Lit lit)
    {
        var holder = scene.Kit.Holders.FirstOrDefault(one => one.Name == lit.Spec.Holder);
        return (holder, HeldLight.By(holder ?? FreeHand, lit.Standing, scene.Room, [.. scene.Cameras.Select(seen => seen.Lens.Back)]));
    }

    private static (double Share, Angle Pitch) Cover(StandScene scene, Lit lit) =>
        scene.Cameras.Select(camera => (Share: camera.Covers(lit.Standing, scene.Points), camera.View.Pitch)).MaxBy(pair => pair.Share);

    // The quickest to see first, so that whoever asks for none is soon answered.
    private static IEnumerable<LightFault> FaultsOf(StandScene scene, ExposurePlan exposure, Lit lit, Stops spare, Func<IReadOnlyList<Lit>> all)
    {
        var (named, held) = HolderOf(scene, lit);
        foreach (var fault in named is null ? [] : held.Faults)
        {
            yield return fault;
        }

        var (covers, pitch) = Cover(scene, lit);
        foreach (var fault in LightFaults.OfCover(covers, pitch).Concat(LightFaults.OfPlace(scene, lit.Standing, held.Line)).Concat(LightFaults.OfGlow(LightFaultKind.Glare, lit.Glow.Value.Glare, exposure, spare)))
        {
            yield return fault;
        }

        if (lit.Glow.Value.Sheet is not null && all() is var lights && ReferenceEquals(lit, lights.MaxBy(other => other.Glow.Value.Sheet?.Value)))
        {
            foreach (var fault in LightFaults.OfGlow(LightFaultKind.Brightens, OnSheet(lights), exposure, spare))
            {
                yield return fault;
            }
        }
    }

    private static LightStandPlan Of(StandScene scene, ExposurePlan exposure, Lit lit, List<Lit> all)
    {
        var (standing, spec) = (lit.Standing, lit.Spec);
        var (holder, held) = HolderOf(scene, lit);
        var (covers, pitch) = Cover(scene, lit);
        StandPoint At(Position place) => new(Length.FromMeters(place.X - scene.Subject.X), Length.FromMeters(place.Y - scene.Subject.Y), Length.FromMeters(place.Z - scene.Subject.Z));
        var place = At(standing.Front.Centre);
        var (across, up) = (AngularSize.Of(standing.Front.Width, spec.Distance), AngularSize.Of(standing.Front.Height, spec.Distance));
        return new LightStandPlan
        {
            SetUp = scene.SetUp.Name,
            Framing = exposure.Framing.Name,
            Flash = spec.Flash,
            Modifier = spec.Modifier,
            Role = spec.Role,
            Place = lit.Plan.Place,
            From = standing.From,
            Distance = spec.Distance,
            Right = place.Right,
            Back = place.Back,
            Up = place.Up,
            OverGround = Length.FromMeters(standing.Front.Centre.Z),
            Width = standing.Front.Width,
            Height = standing.Front.Height,
            Depth = standing.Depth,
            AngleAcross = across,
            AngleUp = up,
            Softness = SoftnessOf(across, up),
            ShadowDepth = Shadow(exposure, lit, all),
            DirectionLoss = lit.Loss,
            LensCovers = covers,
            LensCoversAt = pitch,
            SheetLevel = lit.Glow.Value.Sheet,
            GlareLevel = lit.Glow.Value.Glare,
            Holder = holder?.Name,
            HeldBy = (holder ?? FreeHand).Kind,
            HolderLine = [.. held.Line.Select(At)],
            ReachNeeded = held.Reach,
            WithinReach = held.Faults.Count == 0,
            Faults = [.. FaultsOf(scene, exposure, lit, default, () => all)],
        };
    }

    /// <summary>How soft a light of two angles is.</summary>
    internal static Softness SoftnessOf(Angle across, Angle up) => Math.Sqrt(across.Degrees * up.Degrees) switch
    {
        < 6 => Softness.Hard,
        < 12 => Softness.FairlyHard,
        < 30 => Softness.Soft,
        _ => Softness.VerySoft,
    };

    private static Stops? OnSheet(IReadOnlyList<Lit> all) =>
        all.Select(lit => lit.Glow.Value.Sheet).OfType<Stops>().ToArray() is { Length: > 0 } levels ? CombinedLight.Sum(levels) : null;

    // A flank stands for what lies in shadow: it gets the other lights, the light of the place, and half of what the sheet throws up on the underside.
    private static Stops? Shadow(ExposurePlan exposure, Lit lit, List<Lit> all)
    {
        var key = all.Where(other => other.Spec.Role != LightRole.Rim).Sum(other => other.Plan.Budget.Total.Ratio);
        var others = all.Where(other => !ReferenceEquals(other, lit) && other.Spec.Role != LightRole.Rim).Sum(other => other.Plan.Budget.Total.Ratio);
        var shade = (exposure.SubjectAmbient is { } apart ? apart.AtIso100 - exposure.Ambient.AtIso100 : 0) - (exposure.WhiteMargin is null ? exposure.ShelterLoss.Value : 0);
        var sheet = exposure.Uplight is { } uplight ? uplight.Ratio * key * ShadowDepth.ShareOfSheet(Math.PI / 2) : 0;
        var rest = others + Math.Pow(2, exposure.AmbientLevel.Value + shade) + sheet;
        return double.IsNormal(rest) ? ShadowDepth.Of(lit.Plan.Budget.Total.Ratio, rest) : null;
    }

    private sealed record Lit(LightPlan Plan, LightSpec Spec, StandingLight Standing, Stops Loss, Lazy<LightGlow> Glow);
}
