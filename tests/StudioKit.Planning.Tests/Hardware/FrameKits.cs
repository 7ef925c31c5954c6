using StudioKit.Kits;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Tests.Hardware;

/// <summary>Frames of many shapes about the lenses of one demo kit, planned no further than frame and workshop.</summary>
internal static class FrameKits
{
    private static readonly KitSpec Base = KitText.DemoRead("pond-edge.yaml").Kit!;
    private static readonly Lazy<IReadOnlyList<PlannedFraming>> Framings = new(() => PlanStages.Framings(Base));

    /// <summary>A hundred in the ordinary run, or as many as the environment asks for.</summary>
    public static long Count => long.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), System.Globalization.CultureInfo.InvariantCulture, out var count) ? count : 100;

    /// <summary>Kits; those that no frame can be drawn for among them.</summary>
    public static Gen<KitSpec> Any { get; } =
        from size in Gen.Select(Gen.Int[200, 900], Gen.Int[200, 700], Gen.Int[120, 900])
        from kind in Gen.OneOf(Gen.Const(FrameKind.Table), Gen.Const(FrameKind.Table), Gen.Const(FrameKind.LowGround), Gen.Const(FrameKind.SweptTable))
        from seat in Gen.OneOf(Gen.Const(PanelSeat.OverRails), Gen.Const(PanelSeat.InsideRails))
        from held in Gen.Select(Gen.OneOf(Gen.Const(0), Gen.Const(4), Gen.Const(5), Gen.Const(8)), Gen.Bool, Gen.OneOf(Gen.Const(0.0), Gen.Const(4.5)))
        from more in Gen.Select(Gen.Bool, Gen.Int[0, 9], Gen.Int[1, 3], Gen.OneOf(Gen.Const(0.0), Gen.Const(1.0)))
        select Base with
        {
            Panel = Base.Panel with { Width = Length.FromMillimeters(size.Item1), Depth = Length.FromMillimeters(size.Item2), Skirts = more.Item1, SweepRadius = kind == FrameKind.SweptTable ? Length.FromMeters(1) : null, SweepAngle = null },
            Frame = Base.Frame with
            {
                Kind = kind,
                Height = Length.FromMillimeters(size.Item3),
                PanelSeat = seat,
                InsertionGap = Length.FromMillimeters(more.Item4),
                Pegs = new PegsSpec { Count = held.Item1, Guys = held.Item2, Hold = Mass.FromKilograms(3) },
                Ballast = Mass.FromKilograms(held.Item3),
            },
            Site = Base.Site with { Slope = Angle.FromDegrees(more.Item2) },
            Stock = Base.Stock with { Studios = more.Item3 },
        };

    /// <summary>The frame of a kit; none where none can be drawn.</summary>
    public static FramePlan? FrameOf(KitSpec kit) => PlanStages.Frame(kit, PlanStages.Panel(kit, Framings.Value), PlanStages.Uprights(kit, Framings.Value), new PlanningServices());

    /// <summary>Frames of the demo kits.</summary>
    public static IEnumerable<FramePlan> Demos => new[] { "tall-stand.yaml", "fen-edge.yaml", "heath-ultralight.yaml", "pond-edge.yaml" }.Select(name => KitText.Demo(name).Frame!);
}
