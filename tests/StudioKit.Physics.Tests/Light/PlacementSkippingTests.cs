using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Placements;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>A search that skips places finds what one finds that works out all of them: the independent route judges place by place and picks by plain comparison of pairs.</summary>
public sealed class PlacementSkippingTests
{
    private static readonly Gen<Obstacle> AnyPipe = Gen.Select(
        Gen.Double[-0.28, 0.28], Gen.Double[-0.18, 0.18], Gen.Double[0.02, 0.38], Gen.Int[0, 2],
        (x, y, z, lie) => (Obstacle)new PipeObstacle(
            new(x, y, z), lie switch { 0 => new(-x, y, z), 1 => new(x, -y, z), _ => new(x, y, 0.4 - z) }, Length.FromMillimeters(21)));

    private static readonly Gen<PlacementFraming> AnyFraming = Gen.Select(
        Gen.Double[45, 90], Gen.Double[20, 110], Gen.Double[0.5, 2.5], Framing);

    private static readonly Gen<PlacementCase> AnyCase = Gen.Select(
        AnyPipe.Array[0, 5], AnyFraming.Array[1, 4], Gen.Bool, Gen.Double[0, 0.12], Gen.Double[0, 8], Gen.Double[20, 600], Case);

    [Fact]
    public void Skipping_places_changes_nothing_about_the_answer() => AnyCase.Sample(
        search =>
        {
            var judge = new PlacementJudge(search);
            Placement[] all = [.. PlacementGrid.Candidates(search, judge.Target).Select(judge.Judge)];
            Placement[] served = [.. all.Where(placement => placement.Limit == PlacementLimit.None)];

            var found = FlashPlacement.Search(search);

            (found.Recommended is null).Should().Be(served.Length == 0);
            Placement[] rivals = found.Recommended is { } refined ? [.. served, refined] : served;
            Told(found.Frontier).Should().Equal(Told(rivals.Where((one, i) => !rivals.Where((other, j) => Beats(other, one, j < i)).Any())
                .OrderBy(placement => placement.MeanEnergy.Joules)));
            if (served.Length == 0)
            {
                var nearest = all.OrderBy(placement => placement.Limit).ThenBy(placement => PlacementJudge.Excess(search, placement)).First();
                Told([found.Nearest!]).Should().Equal(Told([nearest]));
            }
        },
        iter: 6);

    [Fact]
    public void One_processor_finds_what_several_find() => AnyCase.Sample(
        search =>
        {
            var (one, several) = (FlashPlacement.Search(search, isAlone: true, null, default), FlashPlacement.Search(search));

            Told(one.Frontier).Should().Equal(Told(several.Frontier));
            Told([.. new[] { one.Recommended, one.Nearest }.OfType<Placement>()]).Should().Equal(Told([.. new[] { several.Recommended, several.Nearest }.OfType<Placement>()]));
        },
        iter: 3);

    /// <summary>The matrix of all bounces against the sweeps that a plan's light takes, which settle to a ten-millionth.</summary>
    [Fact]
    public void A_tried_flash_gives_the_light_that_a_plan_has() => AnyCase.Sample(
        search =>
        {
            var (panel, surround) = (search.Panel with { Height = search.PanelHeights[0] }, search.Surrounds[0]);
            var emitter = PlacementGrid.Candidates(search, height => new Position(0.02, 0, height.Meters))[0].Emitters(1)[0] with { AxialIntensityTime = 1 };
            var map = LightBox.Prepare(panel, surround, new PanelGrid(6, 5)).Illuminate([emitter]);
            var box = LightBox.At(panel, surround, [.. from row in Enumerable.Range(0, 5) from column in Enumerable.Range(0, 6) select (map.Place(column, row), -Direction.Up)]);

            var tried = box.Try(emitter).At(30);

            for (var i = 0; i < 30; i++)
            {
                // The map counts its own points from the left edge and tells their places from the middle, which rounds apart.
                tried.Direct[i].Should().BeApproximately(map.DirectExposure(i % 6, i / 6), 1e-12 * map.DirectExposure(i % 6, i / 6));
                (tried.Direct[i] + tried.Interreflected[i]).Should().BeApproximately(map.Exposure(i % 6, i / 6), 1e-5 * map.Exposure(i % 6, i / 6));
            }
        },
        iter: 6);

    // Not worse in either, and better in one or named before.
    private static bool Beats(Placement one, Placement other, bool isBefore) =>
        one.MeanEnergy.Joules <= other.MeanEnergy.Joules && one.Spread.Value <= other.Spread.Value
        && (isBefore || one.MeanEnergy.Joules < other.MeanEnergy.Joules || one.Spread.Value < other.Spread.Value);

    // Every bit of what a placement says.
    private static string[] Told(IEnumerable<Placement> placements) =>
    [
        .. placements.Select(placement => FormattableString.Invariant(
            $"{placement.Limit} {placement.MeanEnergy.Joules:R} {placement.Spread.Value:R} {string.Join(' ', placement.Framings.Select(framing => FormattableString.Invariant($"{framing.Power:R} {framing.Darkest.Value:R} {framing.Brightest.Value:R}")))}")),
    ];

    private static PlacementCase Case(Obstacle[] frame, PlacementFraming[] framings, bool hasSkirts, double aside, double exponent, double intensity)
    {
        var surround = new LightSurround { SkirtReflectance = hasSkirts ? 0.8 : null, FloorReflectance = 0.1, Frame = [.. frame] };
        return new()
        {
            Panel = Studio.Panel(0.6, 0.4, 0.4),
            Framings = framings,
            Flashes = [Flash("bare", exponent, intensity), Flash("dome", 1, intensity)],
            PanelHeights = [Length.FromMillimeters(400)],
            Surrounds = [surround, surround with { SkirtReflectance = null, FloorReflectance = 0 }],
            Distances = [Length.FromMillimeters(180), Length.FromMillimeters(330)],
            OffsetsRight = [Length.Zero, Length.FromMeters(aside)],
            OffsetsBack = [Length.FromMillimeters(-40), Length.FromMillimeters(30)],
        };
    }

    private static PlacementFlash Flash(string name, double exponent, double intensity) => new()
    {
        Name = name,
        Lobe = new CosineLobe(exponent, exponent),
        Width = Length.FromMillimeters(70),
        Height = Length.FromMillimeters(40),
        FullPowerIntensityTime = intensity * (exponent + 1),
    };

    private static PlacementFraming Framing(double pitch, double width, double highest) => new(
        new CameraView
        {
            Name = FormattableString.Invariant($"{width:R} at {pitch:R}"),
            FieldWidth = Length.FromMillimeters(width),
            FieldHeight = Length.FromMillimeters(width / 1.5),
            PupilDistance = Length.FromMillimeters(350),
            Pitch = Angle.FromDegrees(pitch),
        },
        new CameraCase { Aperture = new FNumber(16), Iso = new IsoSpeed(200) },
        new Stops(highest));
}
