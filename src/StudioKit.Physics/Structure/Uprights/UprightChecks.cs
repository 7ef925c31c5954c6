using StudioKit.Physics.Structure.Checks;
using UnitsNet;
using UnitsNet.Units;

namespace StudioKit.Physics.Structure.Uprights;

/// <summary>Every check of an upright sheet at a gust.</summary>
internal sealed class UprightChecks
{
    // Common practice, no source: a sheet that swings further bruises what stands before it.
    private const double ReachShare = 0.5;

    private readonly UprightCase _upright;
    private readonly UprightShape _shape;
    private readonly UprightHold _hold;
    private readonly PipeWarmth _warmth;

    public UprightChecks(UprightCase upright, UprightShape shape, PipeWarmth warmth)
    {
        (_upright, _shape, _warmth, _hold) = (upright, shape, warmth, new UprightHold(upright, shape));
        Pole = new UprightPole(upright, shape, warmth, _hold);
        Sheet = new UprightBow(upright, shape);
    }

    public UprightPole Pole { get; }

    public UprightBow Sheet { get; }

    /// <summary>The checks, in the order to print them.</summary>
    public IEnumerable<StructuralCheck> At(double gust)
    {
        if (_upright.Footing != UprightFooting.Frame)
        {
            yield return Tipping(gust);
        }

        if (_upright.Footing == UprightFooting.Feet)
        {
            yield return Sliding(gust);
        }

        yield return Poles(gust);
        yield return Stress(StructuralCheckKind.UprightSheet, Sheet.Stress(Sheet.Load(gust)), _upright.Sheet.ShortTermStress, [Gust(gust)]);
        if (_shape.Lean > 0)
        {
            yield return Stress(StructuralCheckKind.UprightSheetLeaning, Sheet.Stress(Sheet.OwnLoad), _upright.Sheet.LongTermStress, [new(StructuralLoadKind.Sheet, Force.FromNewtons(_shape.SheetWeight))]);
        }

        yield return Reach(gust);
    }

    private StructuralCheck Tipping(double gust)
    {
        var (demand, capacity) = _hold.Tipping(gust);
        var onStakes = _upright.Footing == UprightFooting.Stakes;
        return new StructuralCheck(
            StructuralCheckKind.UprightTipping,
            [],
            Torque.FromNewtonMeters(demand),
            Torque.FromNewtonMeters(capacity),
            Ratio(demand, capacity),
            [OnOnePole, .. onStakes ? [new StructuralCaveat(StructuralCaveatKind.StakeHold)] : Array.Empty<StructuralCaveat>(), .. PegCaveats],
            onStakes ? "Broms1964" : "EN-1991-1-4",
            onStakes ? "short free-headed piles; wind as on a signboard" : "7.4.3; moments about the end of a foot")
        {
            Loads = [Gust(gust), .. Held, .. PegLoads],
        };
    }

    private StructuralCheck Sliding(double gust)
    {
        var (demand, capacity) = _hold.Sliding(gust);
        return new StructuralCheck(
            StructuralCheckKind.UprightSliding,
            [],
            Force.FromNewtons(demand),
            Force.FromNewtons(capacity),
            Ratio(demand, capacity),
            [OnOnePole, new StructuralCaveat(StructuralCaveatKind.Friction), .. PegCaveats],
            "EN-1991-1-4",
            "7.4.3; friction")
        {
            Loads = [Gust(gust), .. Held, .. PegLoads],
        };
    }

    private StructuralCheck Poles(double gust)
    {
        var modulus = PipeSection.Modulus(_upright.Pipe.OutsideDiameter.Meters, _upright.Pipe.Wall.Meters);
        var (demand, capacity) = (Pole.Moment(gust) / modulus, _warmth.IsTooHot ? 0 : Pole.Strength / modulus / _upright.StrengthSafety);
        return new StructuralCheck(
            StructuralCheckKind.UprightPoles,
            [],
            Pressure.FromPascals(demand).ToUnit(PressureUnit.Megapascal),
            Pressure.FromPascals(capacity).ToUnit(PressureUnit.Megapascal),
            Ratio(demand, capacity),
            [new StructuralCaveat(StructuralCaveatKind.GustOnOnePole) { Safety = _upright.StrengthSafety }, .. _warmth.Softening],
            "Gere2009",
            "flexure formula")
        {
            Loads = [Gust(gust), .. Warm],
        };
    }

    private StructuralCheck Stress(StructuralCheckKind kind, double stress, Pressure bears, IReadOnlyList<StructuralLoad> loads) => new(
        kind,
        [],
        Pressure.FromPascals(stress).ToUnit(PressureUnit.Megapascal),
        bears.ToUnit(PressureUnit.Megapascal),
        stress / Guard.Positive(bears.Pascals, nameof(_upright.Sheet)),
        [new StructuralCaveat(StructuralCaveatKind.LeastThickness)],
        "Timoshenko1959",
        "art. 48")
    {
        Loads = loads,
    };

    private StructuralCheck Reach(double gust)
    {
        var moved = Length.FromMeters(Pole.Lean(gust) + Sheet.Bow(Sheet.Load(gust)));
        var limit = ReachShare * Guard.Positive(_upright.ToSubject.Meters, nameof(_upright.ToSubject));
        return new StructuralCheck(
            StructuralCheckKind.UprightReach,
            [],
            moved.ToUnit(LengthUnit.Millimeter),
            Length.FromMeters(limit).ToUnit(LengthUnit.Millimeter),
            moved.Meters / limit,
            [
                new StructuralCaveat(StructuralCaveatKind.HalfWayToSubject),
                .. _upright.Footing switch
                {
                    UprightFooting.Stakes => [new StructuralCaveat(StructuralCaveatKind.GroundNotCounted)],
                    _ => Array.Empty<StructuralCaveat>(),
                },
                .. _upright.Footing == UprightFooting.Feet || _upright.Couplings.Count > 0 ? [new StructuralCaveat(StructuralCaveatKind.JointStiffness)] : Array.Empty<StructuralCaveat>(),
            ],
            "Gere2009",
            "deflections of cantilever beams; Timoshenko art. 48 for the sheet")
        {
            Loads = [Gust(gust), .. Warm],
        };
    }

    private StructuralCaveat OnOnePole => new(StructuralCaveatKind.GustOnOnePole) { Safety = _upright.WindSafety };

    private StructuralCaveat[] PegCaveats => _upright.Cords > 0 ? [new(StructuralCaveatKind.PegHold), new(StructuralCaveatKind.CordsTrip)] : [];

    private StructuralLoad[] PegLoads => _upright.Cords > 0 ? [new(StructuralLoadKind.PegHold, _upright.PegHold)] : [];

    private StructuralLoad[] Held => _upright switch
    {
        { Footing: UprightFooting.Stakes } => [new(StructuralLoadKind.StakeHold, _upright.StakeHold)],
        { Footing: UprightFooting.Feet, Ballast: var ballast } when ballast > Mass.Zero => [new(StructuralLoadKind.FeetBallast, ballast)],
        _ => [],
    };

    private StructuralLoad[] Warm => _upright.Pipe.SoftensLikePvc
        ? [new(StructuralLoadKind.Air, _upright.Air), new(StructuralLoadKind.SunWarming, _upright.SunWarming)]
        : [];

    private static StructuralLoad Gust(double gust) => new(StructuralLoadKind.Gust, Speed.FromMetersPerSecond(gust));

    private static double Ratio(double demand, double capacity) => capacity > 0 ? demand / capacity : demand > 0 ? double.MaxValue : 0;
}
