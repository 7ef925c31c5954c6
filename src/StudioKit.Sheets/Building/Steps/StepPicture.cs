using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>What a step's drawing shows, before it is known how large it comes out.</summary>
internal sealed class StepPicture
{
    /// <summary>Bodies, each drawn once the scale is known.</summary>
    public List<Func<Camera, Solid>> Bodies { get; } = [];

    /// <summary>Lines over the bodies, such as cords.</summary>
    public List<(FramePoint From, FramePoint To, Stroke Stroke)> Lines { get; } = [];

    /// <summary>Edges of bodies that labels keep off.</summary>
    public List<(FramePoint From, FramePoint To)> Edges { get; } = [];

    /// <summary>What labels keep off: fittings and pipes.</summary>
    public List<Tube> Bars { get; } = [];

    public List<StepPush> Pushes { get; } = [];

    public List<StepName> Names { get; } = [];

    /// <summary>Small drawings beside it, each at its own size with the words under it.</summary>
    public List<(Func<IReadOnlyList<Primitive>> Marks, string Words)> Insets { get; } = [];

    /// <summary>Pieces that come in, with their length: what comes out too short on paper is shown larger.</summary>
    public List<(string Label, double Length)> Pieces { get; } = [];

    /// <summary>Shows a piece larger.</summary>
    public Func<string, IReadOnlyList<Primitive>>? Larger { get; set; }

    /// <summary>Whether it says where front is.</summary>
    public bool SaysFront { get; set; } = true;
}
