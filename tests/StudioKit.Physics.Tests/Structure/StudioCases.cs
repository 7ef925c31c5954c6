using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Physics.Tests.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

/// <summary>A studio to check, with everything that a kit would say.</summary>
internal static class StudioCases
{
    public static StudioCheckCase Fen { get; } = new()
    {
        Frame = PipeFrame.Generate(FrameCases.FenTable),
        Pipe = FrameCases.Metric20,
        Sheet = new Sheet { Thickness = Length.FromMillimeters(3) },
        PanelWidth = FrameCases.FenTable.PanelWidth,
        PanelDepth = FrameCases.FenTable.PanelDepth,
        StandingMass = Mass.FromKilograms(2.5),
        SunWarming = TemperatureDelta.FromDegreesCelsius(10),
        Subject = Mass.FromGrams(200),
        Elbow = Force.FromNewtons(30),
        Friction = 0.4,
        JointStiffness = FrameCases.FenTable.JointStiffness,
    };
}
