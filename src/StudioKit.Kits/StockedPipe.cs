using StudioKit.Kits.Studio;

namespace StudioKit.Kits;

/// <summary>A pipe of the parts library with a family of fittings that takes it.</summary>
/// <param name="Part">Name of the pipe in the library.</param>
/// <param name="Pipe">The pipe.</param>
/// <param name="FittingsPart">Name of the fittings in the library.</param>
/// <param name="Fittings">The fittings.</param>
public sealed record StockedPipe(string Part, PipeSpec Pipe, string FittingsPart, FittingsSpec Fittings)
{
    private static readonly Lazy<IReadOnlyList<StockedPipe>> Library = new(() => Read(PartsLibrary.Embedded));

    /// <summary>Every pipe of the library that comes with StudioKit for which it has fittings.</summary>
    public static IReadOnlyList<StockedPipe> Embedded => Library.Value;

    private static IReadOnlyList<StockedPipe> Read(PartsLibrary library)
    {
        var fittings = library.Names("fittings").Select(name => (Name: name, Spec: FrameOf(library, $"fittings: {name}").Fittings)).ToList();
        return
        [
            .. from name in library.Names("pipes")
               let pipe = FrameOf(library, $"pipe: {name}").Pipe
               from family in fittings
               where family.Spec.PipeDiameter is { } bore && Math.Abs((bore - pipe.OutsideDiameter).Millimeters) < 0.05
               select new StockedPipe(name, pipe, family.Name, family.Spec),
        ];
    }

    // A part is read as every kit reads it: by a kit that names it.
    private static FrameSpec FrameOf(PartsLibrary library, string part) => KitReader.Parse(
        $$"""
        kit: parts
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses: [{name: lens, focal-length: 50 mm}]
        frame: { {{part}} }
        """,
        "parts.yaml",
        library).Kit!.Frame;
}
