using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Light;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>How the glow of an upright sheet round the subject's edges compares with the lights on the subject.</summary>
internal static class EdgeSpillPlanner
{
    // Parts of the sheet along each side, each as bright all over as its middle.
    private const int Parts = 12;

    // A millionth of the key is round-off, or an edge that stands beyond the sheet's own edge.
    private const double Nothing = 1e-6;

    /// <summary>Light on each edge, where it is strongest over all camera angles; none where none reaches any.</summary>
    /// <param name="map">The sheet's light at full power.</param>
    /// <param name="power">Power of the flashes behind it.</param>
    /// <param name="views">The camera's views, counted from the middle of the sheet as it lies on its back.</param>
    /// <param name="key">Luminous exposure of the subject by the lights on it [lx·s]; &gt; 0.</param>
    /// <param name="correct">Luminous exposure that is correct [lx·s]; &gt; 0.</param>
    public static EdgeSpillPlan? Of(LightMap map, FlashPower power, IEnumerable<CameraView> views, double key, double correct)
    {
        ValueList<LimbSpill> limbs =
        [
            .. views.DistinctBy(view => view.Pitch).SelectMany(view => In(map, power, view, key, correct))
                .GroupBy(limb => limb.Limb)
                .Select(limbs => limbs.MaxBy(limb => limb.AgainstKey.Value)!),
        ];
        return limbs.Count == 0 ? null : new EdgeSpillPlan { Limbs = limbs };
    }

    /// <summary>Luminous exposure of the subject that a camera renders as it should.</summary>
    /// <param name="camera">The camera as it is set.</param>
    /// <returns>C·N_e²/S [lx·s], by the rule that guide numbers follow, and more for what is lost before the lens.</returns>
    public static double Correct(CameraCase camera) =>
        LightMeter.IncidentConstant * camera.Effective.Value * camera.Effective.Value / camera.Iso.Value * (camera.FilterLoss + camera.CoverLoss).Ratio;

    private static IEnumerable<LimbSpill> In(LightMap map, FlashPower power, CameraView view, double key, double correct)
    {
        var (sin, cos) = Math.SinCos(view.Pitch.Radians);
        var subject = new Position(view.SubjectRight.Meters, view.SubjectBack.Meters, (map.Panel.Height + view.SubjectHeight).Meters);
        var sheet = PartsOf(map, power, subject).ToList();
        var (sight, upper) = (Direction.Of(0, cos, -sin), Direction.Of(0, sin, cos));
        foreach (var (limb, facing) in new[] { (SubjectLimb.Left, -Direction.Right), (SubjectLimb.Right, Direction.Right), (SubjectLimb.Upper, upper), (SubjectLimb.Lower, -upper) })
        {
            var spill = EdgeSpill.On(sheet, subject, facing);
            if (spill > key * Nothing)
            {
                var reach = EdgeSpill.Reach(sheet, subject, facing, sight, key * EdgeSpillPlan.RimFrom.Ratio);
                yield return new LimbSpill(limb, SubjectUplight.AgainstKey(spill, key), Stops.FromRatio(spill / correct), EdgeSpill.ShareOfDiameter(reach));
            }
        }
    }

    private static IEnumerable<GlowingPatch> PartsOf(LightMap map, FlashPower power, Position subject)
    {
        var (width, height) = (map.Panel.Width / Parts, map.Panel.Depth / Parts);
        for (var i = 0; i < Parts * Parts; i++)
        {
            var (row, column) = Math.DivRem(i, Parts);
            Position At(double right, double up) => map.Panel.At(PlaceAt(right, up));
            PanelPlace PlaceAt(double right, double up) => new((width * (column + right)) - (map.Panel.Width / 2), height * (row + up));
            var middle = PlaceAt(0.5, 0.5);
            var glow = map.LuminanceTime(middle.Across, middle.AlongSheet, Direction.From(map.Panel.At(middle), subject));
            yield return new GlowingPatch(glow * power.Fraction, At(0, 0), At(1, 0), At(1, 1), At(0, 1));
        }
    }
}
