using UnitsNet;

namespace StudioKit.Physics.Structure.Checks;

/// <summary>What the day's warmth leaves of a pipe's stiffness and strength.</summary>
internal sealed class PipeWarmth
{
    private readonly Pipe _pipe;
    private readonly Temperature _air;
    private readonly double _celsius;

    public PipeWarmth(StudioCheckCase studio)
        : this(studio.Pipe, studio.Air, studio.SunWarming)
    {
    }

    public PipeWarmth(Pipe pipe, Temperature air, TemperatureDelta sunWarming)
    {
        (_pipe, _air) = (pipe, air);
        _celsius = air.DegreesCelsius + Guard.NonNegative(sunWarming.DegreesCelsius, nameof(sunWarming));
        var within = Math.Min(_celsius, PvcTemperature.Hottest);
        var softens = pipe.SoftensLikePvc;
        StrengthFactor = softens ? PvcTemperature.StrengthFactor(within) : 1;
        ModulusFactor = softens ? PvcTemperature.ModulusFactor(within) : 1;
    }

    public double StrengthFactor { get; }

    public double ModulusFactor { get; }

    /// <summary>Bending stiffness of the warm pipe [N·m²].</summary>
    public double Stiffness =>
        ModulusFactor * _pipe.YoungsModulus.Pascals
        * PipeSection.SecondMoment(_pipe.OutsideDiameter.Meters, _pipe.Wall.Meters);

    /// <summary>Whether PVC would be hotter than it may be to carry anything.</summary>
    public bool IsTooHot => _pipe.SoftensLikePvc && _celsius > PvcTemperature.Hottest;

    /// <summary>What to bear in mind of the warm pipe.</summary>
    public IEnumerable<StructuralCaveat> Softening => _pipe.SoftensLikePvc ? Caveats() : [];

    public IEnumerable<StructuralCheck> Checks()
    {
        if (!_pipe.SoftensLikePvc)
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
        if (_air.DegreesCelsius <= 0)
        {
            yield return new StructuralCaveat(StructuralCaveatKind.BrittlePipe);
        }
    }
}
