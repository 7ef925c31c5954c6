using UnitsNet;

namespace StudioKit.Physics.Structure.Checks;

/// <summary>Checks of the panel: sag, stress, elbow, sweep, growth.</summary>
internal static class PanelChecks
{
    // Common practice, no source: more sag than this shows as a dip under a subject.
    private const double SagShare = 0.01;

    public static IEnumerable<StructuralCheck> Of(StudioCheckCase studio)
    {
        var standing = Sag(studio, studio.Subject.Kilograms * PanelSag.Gravity);
        yield return SagCheck(studio, standing);
        yield return Stress(StructuralCheckKind.PanelStress, standing.Stress, studio.Sheet.LongTermStress, standing.Caveats, "AcrylicDesignNote", "long-term stress without crazing");

        var leant = Sag(studio, (studio.Subject.Kilograms * PanelSag.Gravity) + studio.Elbow.Newtons);
        yield return Stress(StructuralCheckKind.PanelStressUnderElbow, leant.Stress, studio.Sheet.ShortTermStress, ElbowCaveats(leant), "Young2002", "table 11.4, case 1b");
        if (studio.SweepRadius is { } radius)
        {
            yield return Sweep(studio.Sheet, radius);
        }

        yield return Growth(studio);
    }

    private static PanelSagResult Sag(StudioCheckCase studio, double newtons)
    {
        var (width, depth) = (studio.PanelWidth, studio.PanelDepth);
        var panel = new PanelLoadCase(
            width < depth ? width : depth,
            width < depth ? depth : width,
            studio.Sheet,
            Pressure.Zero,
            Force.FromNewtons(newtons),
            studio.ContactRadius);

        // What rests on the front and back rails alone spans the depth.
        return studio.Frame.Ledge.AllRound ? PanelSag.AtCentre(panel) : PanelStripSag.OnTwoEdges(panel, depth <= width);
    }

    private static StructuralCheck SagCheck(StudioCheckCase studio, PanelSagResult sag)
    {
        var limit = Length.FromMeters(SagShare * Math.Min(studio.PanelWidth.Meters, studio.PanelDepth.Meters));
        var ratio = sag.FreeEdges / limit;
        StructuralCaveat[] caveats =
        [
            .. sag.Caveats,
            sag.HeldEdges is { } held
                ? new(StructuralCaveatKind.SagWithEdgesHeld) { Size = held }
                : new(StructuralCaveatKind.RestsOnTwoEdges),
            new(StructuralCaveatKind.SagAtLeastThickness) { Size = sag.FreeEdgesAtLeastThickness },
            new(StructuralCaveatKind.HundredthOfShortSide),
        ];
        return new StructuralCheck(
            StructuralCheckKind.PanelSag,
            [],
            sag.FreeEdges.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            limit.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            ratio,
            caveats,
            "Timoshenko1959",
            studio.Frame.Ledge.AllRound ? "arts. 30, 34" : "arts. 36, 48");
    }

    private static StructuralCheck Stress(
        StructuralCheckKind kind, Pressure demand, Pressure capacity, IReadOnlyList<StructuralCaveat> caveats, string key, string locator) => new(
        kind,
        [],
        demand.ToUnit(UnitsNet.Units.PressureUnit.Megapascal),
        capacity.ToUnit(UnitsNet.Units.PressureUnit.Megapascal),
        demand / capacity,
        caveats,
        key,
        locator);

    private static IReadOnlyList<StructuralCaveat> ElbowCaveats(PanelSagResult sag) =>
        [.. sag.Caveats, new StructuralCaveat(StructuralCaveatKind.SagUnderElbow) { Size = sag.FreeEdges }];

    private static StructuralCheck Sweep(Sheet sheet, Length radius)
    {
        var least = Length.FromMeters(ColdBend.SmallestRadius(sheet.Thickness.Meters, sheet.ColdBendRatio));
        var stress = Pressure.FromPascals(ColdBend.Stress(sheet.YoungsModulus.Pascals, sheet.Thickness.Meters, radius.Meters));
        return new StructuralCheck(
            StructuralCheckKind.SweepBentCold,
            [],
            least.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            radius.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            least / radius,
            [new StructuralCaveat(StructuralCaveatKind.StressWhileBent) { Stress = stress }],
            "CommonPractice",
            "cold-bend radius of acrylic in thicknesses",
            least > radius ? Sized(StructuralRemedyKind.WiderSweep, least.Millimeters) : null);
    }

    private static StructuralCheck Growth(StudioCheckCase studio)
    {
        var longest = Math.Max(studio.PanelWidth.Meters, studio.PanelDepth.Meters);
        var warming = Math.Max(0, studio.Air.DegreesCelsius + studio.SunWarming.DegreesCelsius - studio.Built.DegreesCelsius);
        var room = Length.FromMeters(ThermalGrowth.EdgeRoom(
            studio.Sheet.ThermalExpansion.PerKelvin, studio.Pipe.ThermalExpansion.PerKelvin, longest, warming));
        var given = studio.Frame.Ledge.EdgeClearance;
        var ratio = given.Meters > 0 ? room / given : (room.Meters > 0 ? double.MaxValue : 0);
        return new StructuralCheck(
            StructuralCheckKind.SheetGrowth,
            [],
            room.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            given.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
            ratio,
            [new StructuralCaveat(StructuralCaveatKind.WetSeason) { Size = Length.FromMeters(ThermalGrowth.MostShare * longest / 2) }],
            "AcrylicDesignNote",
            "room for expansion",
            ratio > 1 ? Sized(StructuralRemedyKind.MoreEdgeRoom, Math.Ceiling(2 * room.Millimeters) / 2) : null);
    }

    private static StructuralRemedy Sized(StructuralRemedyKind kind, double millimetres) => new(kind) { Size = Length.FromMillimeters(millimetres) };
}
