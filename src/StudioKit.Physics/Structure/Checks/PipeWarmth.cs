using UnitsNet;

namespace StudioKit.Physics.Structure.Checks;

/// <summary>What the day's warmth leaves of a pipe's stiffness and strength.</summary>
internal sealed class PipeWarmth
{
    private readonly StudioCheckCase _studio;
    private readonly double _celsius;

    public PipeWarmth(StudioCheckCase studio)
    {
        _studio = studio;
        _celsius = studio.Air.DegreesCelsius + Guard.NonNegative(studio.SunWarming.DegreesCelsius, nameof(studio.SunWarming));
        var within = Math.Min(_celsius, PvcTemperature.Hottest);
        var softens = studio.Pipe.SoftensLikePvc;
        StrengthFactor = softens ? PvcTemperature.StrengthFactor(within) : 1;
        ModulusFactor = softens ? PvcTemperature.ModulusFactor(within) : 1;
    }

    public double StrengthFactor { get; }

    public double ModulusFactor { get; }

    /// <summary>Bending stiffness of the warm pipe [N·m²].</summary>
    public double Stiffness =>
        ModulusFactor * _studio.Pipe.YoungsModulus.Pascals
        * PipeSection.SecondMoment(_studio.Pipe.OutsideDiameter.Meters, _studio.Pipe.Wall.Meters);

    public IEnumerable<StructuralCheck> Checks()
    {
        if (!_studio.Pipe.SoftensLikePvc)
        {
            yield break;
        }

        var hottest = Temperature.FromDegreesCelsius(PvcTemperature.Hottest);
        yield return new StructuralCheck(
            StructuralCheckKind.PipeWarmth,
            [],
            Temperature.FromDegreesCelsius(_celsius),
            hottest,
            _celsius / PvcTemperature.Hottest,
            [.. Caveats()],
            "PPFA-UB3",
            "derating factors");
    }

    private IEnumerable<StructuralCaveat> Caveats()
    {
        yield return new StructuralCaveat(StructuralCaveatKind.SoftenedPipe)
        {
            Warmth = Temperature.FromDegreesCelsius(_celsius),
            StiffnessKept = ModulusFactor,
            StrengthKept = StrengthFactor,
        };
        if (_studio.Air.DegreesCelsius <= 0)
        {
            yield return new StructuralCaveat(StructuralCaveatKind.BrittlePipe);
        }
    }
}
