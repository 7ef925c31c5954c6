using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure.Frames;

/// <summary>Frames to test with: one by hand and any number at random.</summary>
internal static class FrameCases
{
    public static Pipe Metric20 { get; } = PipeOf(20, 1.5);

    public static FrameCase FenTable { get; } = new()
    {
        PanelWidth = Length.FromMillimeters(600),
        PanelDepth = Length.FromMillimeters(400),
        Height = Length.FromMillimeters(500),
        LongestPiece = Length.FromMillimeters(580),
        Pipe = Metric20,
        Fittings = FittingsOf(11, 16, 1),
        Stretchers = FrameStretchers.Never,
        JointStiffness = RotationalStiffness.FromNewtonMetersPerRadian(50),
        FootTravel = Length.FromMillimeters(120),
    };

    public static FlashCradleCase Cradle { get; } = new(
        Length.FromMillimeters(250), Length.FromMillimeters(20), Length.FromMillimeters(-30), Length.FromMillimeters(60));

    public static Gen<FrameCase> Any { get; } =
        from shape in Gen.Enum<FrameShape>()
        from seat in Gen.Enum<PanelSeat>()
        from stretchers in Gen.Enum<FrameStretchers>()
        from size in Gen.Double[250, 1500].Array[3]
        from sweep in Gen.Select(Gen.Double[150, 1200], Gen.Double[20, 90])
        from flashes in Gen.Select(Gen.Double[80, 400], Gen.Double[-100, 100], Gen.Double[-60, 60]).Array[0, 3]
        from fit in Gen.Select(Gen.Double[9, 24], Gen.Double[14, 25], Gen.Double[0.3, 2], Gen.Double[0, 3])
        from pack in Gen.Double[250, 800]
        from slope in Gen.Double[0, 15]
        select FenTable with
        {
            Shape = shape,
            Seat = seat,
            Stretchers = stretchers,
            PanelWidth = Length.FromMillimeters(size[0]),
            PanelDepth = Length.FromMillimeters(size[1]),
            Height = Length.FromMillimeters(size[2]),
            SweepRadius = Length.FromMillimeters(sweep.Item1),
            SweepAngle = Angle.FromDegrees(sweep.Item2),
            Cradles = [.. flashes.Select(flash => new FlashCradleCase(
                Length.FromMillimeters(flash.Item1), Length.FromMillimeters(flash.Item2), Length.FromMillimeters(flash.Item3), Length.FromMillimeters(50))
            {
                HeadWidth = Length.FromMillimeters(70),
                HeadHeight = Length.FromMillimeters(40),
            })],
            Fittings = FittingsOf(fit.Item1, fit.Item2, fit.Item3),
            InsertionGap = Length.FromMillimeters(fit.Item4),
            LongestPiece = Length.FromMillimeters(pack),
            Slope = Angle.FromDegrees(slope),
        };

    public static Pipe PipeOf(double diameter, double wall) => new(
        Length.FromMillimeters(diameter),
        Length.FromMillimeters(wall),
        Density.FromKilogramsPerCubicMeter(1400),
        Pressure.FromGigapascals(2.9),
        Pressure.FromMegapascals(51.4),
        CoefficientOfThermalExpansion.FromPerKelvin(5.22e-5));

    public static FittingSet FittingsOf(double takeOff, double socket, double couplingStop)
    {
        var bend = new Fitting(Length.FromMillimeters(takeOff), Length.FromMillimeters(socket), Mass.FromGrams(20));
        return new FittingSet(
            bend,
            bend,
            bend,
            bend,
            bend with { TakeOff = Length.FromMillimeters(couplingStop) },
            bend with { TakeOff = Length.Zero });
    }
}
