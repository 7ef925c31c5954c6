using StudioKit.Kits;
using StudioKit.Physics.Light;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Web.Results;
using StudioKit.Wording;
using UnitsNet;
using PlannedPoint = StudioKit.Physics.Light.Views.MarginPoint;

namespace StudioKit.Web.Engine.Telling;

/// <summary>The studio to scale, one picture for each set-up on the panel.</summary>
internal static class StudioTelling
{
    public static IReadOnlyList<StudioPicture> Of(Plan plan) => [.. plan.PanelLights.Select(light => Of(plan.Kit, light))];

    /// <summary>The studio of one set-up.</summary>
    public static StudioPicture Of(KitSpec kit, PanelLightPlan light)
    {
        var place = PlaceOf(kit, light);
        var key = FormattableString.Invariant($"set-ups[{place}]");
        var hardest = light.Framings.MinBy(framing => framing.Darkest.Margin.Value);
        return new StudioPicture(
            light.SetUp, key, light.PanelWidth.Millimeters, light.PanelDepth.Millimeters, light.FlatDepth.Millimeters, light.PanelHeight.Millimeters,
            light.SubjectFromFront.Millimeters, hardest?.Grid.Columns ?? 0, hardest?.Grid.Rows ?? 0,
            Spots(light.Section.Panel), [.. light.Section.Pipes.Select(Bar)], Lights(kit, light, place),
            [.. light.Framings.Select(framing => Framing(kit, framing, light) with { Map = framing == hardest ? Map(framing, light) : null })], [.. LightProblemText.Of(light)])
        {
            Handles = [.. StudioHandles.Of(kit, light, place).Select(handle => handle.Told)],
            Covered = [.. light.Covered.Select(strip => Spots(strip.Corners, light.PanelWidth))],
            CoveredWords = light.Covered.Count > 0 ? MarginText.DarkOverPipe : "",
            UpperLights = [.. Upper(kit.SetUps[place], key, light)],
            Subject = Rounded(light.SubjectFromFront, light.PanelHeight),
        };
    }

    /// <summary>Place of a studio's set-up among the kit's.</summary>
    public static int PlaceOf(KitSpec kit, PanelLightPlan light) => kit.SetUps.ToList().FindIndex(setUp => setUp.Name == light.SetUp);

    private static IEnumerable<UpperLight> Upper(Kits.SetUps.SetUpSpec setUp, string key, PanelLightPlan panel)
    {
        for (var place = 0; place < setUp.Lights.Count; place++)
        {
            if (setUp.Lights[place] is { From: { } from } light)
            {
                var (way, away) = (from.Towards, light.Distance.Millimeters);
                yield return new UpperLight(
                    light.Flash, FormattableString.Invariant($"{key}.lights[{place}]"),
                    away, DistanceFormat.Centimetres(light.Distance),
                    Rounded(panel.SubjectFromFront + (light.Distance * way.Y), panel.PanelHeight + (light.Distance * way.Z)), new Spot(Math.Round(way.Y, 4), Math.Round(way.Z, 4)));
            }
        }
    }

    private static SideBar Bar(SidePipe pipe) => new(SpotOf(pipe.From), SpotOf(pipe.To), pipe.Diameter.Millimeters);

    // The flashes below stand in the plan in the order of the set-up's lights.
    private static IReadOnlyList<LowerLight> Lights(KitSpec kit, PanelLightPlan light, int setUp)
    {
        var places = kit.SetUps[setUp].Lights.Select((spec, place) => (spec, place)).Where(pair => pair.spec.Role == Kits.SetUps.LightRole.Below).Select(pair => pair.place);
        return
        [
            .. light.Flashes.Zip(places, (flash, place) => new LowerLight(
                flash.Flash, FormattableString.Invariant($"set-ups[{setUp}].lights[{place}]"), new Spot(flash.FromLeft.Millimeters, flash.FromFront.Millimeters),
                flash.WindowWidth.Millimeters, flash.WindowHeight.Millimeters, flash.Distance.Millimeters, Spots(flash.Window))),
        ];
    }

    private static SeenFraming Framing(KitSpec kit, FramingLightPlan framing, PanelLightPlan light) => new(
        framing.Framing, framing.Mark.Nominal, framing.IsUsable, Point(framing.Darkest, light), Point(framing.Brightest, light))
    {
        Pitches = [.. framing.Views.Select(view => view.Pitch.Degrees).Distinct()],
        Bands = [.. BandTelling.Of(light.TargetMargin, framing.HighestMargin)],
        Dial = DialTelling.Of(kit, framing, light),
        Comes = DialTelling.Comes(framing, light.TargetMargin),
    };

    /// <summary>What a framing sees, place by place.</summary>
    public static FramingMap Map(FramingLightPlan framing, PanelLightPlan light) =>
        new([.. framing.Grid.Margins.Select(stops => Math.Round(stops, 2))], [.. framing.Views.Select(view => View(view, light))]);

    private static SeenView View(ViewLightPlan view, PanelLightPlan light) => new(
        view.Pitch.Degrees, view.Roll.Degrees != 0, Spots(view.Patch, light.PanelWidth), SpotOf(view.Sight.Pupil), SpotOf(view.Sight.Aim),
        view.Darkest is { } darkest ? Point(darkest, light) : null);

    private static MarginPoint Point(PlannedPoint point, PanelLightPlan light) => new(SpotOf(point.Place, light.PanelWidth), Math.Round(point.Margin.Value, 3), MarginText.At(light, point.Place, point.Margin));

    private static IReadOnlyList<Spot> Spots(IEnumerable<SidePoint> points) => [.. points.Select(SpotOf)];

    private static IReadOnlyList<Spot> Spots(IEnumerable<PanelPlace> places, Length width) => [.. places.Select(place => SpotOf(place, width))];

    private static Spot SpotOf(SidePoint point) => Rounded(point.FromFront, point.Up);

    private static Spot SpotOf(PanelPlace place, Length width) => Rounded(place.Across + (width / 2), place.AlongSheet);

    // A tenth of a millimetre is finer than any screen draws it.
    private static Spot Rounded(Length x, Length y) => new(Math.Round(x.Millimeters, 1), Math.Round(y.Millimeters, 1));
}
