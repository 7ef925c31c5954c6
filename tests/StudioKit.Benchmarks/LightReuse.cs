using StudioKit.Physics.Light;

namespace StudioKit.Benchmarks;

/// <summary>Prints what a kept box saves: each change's processor time as a share of making the box and lighting it.</summary>
internal static class LightReuse
{
    private const int Runs = 40;

    public static void Print(TextWriter output)
    {
        var box = LightBox.Prepare(FramedStudio.Panel, FramedStudio.Surround, FramedStudio.Grid);
        var map = box.Illuminate([FramedStudio.Flash(0)]);
        var (following, step) = (box.Follow(map), 0);
        Emitter[] Moved() => [FramedStudio.Flash(0.001 * (++step % 100))];

        var whole = ProcessorCost.Of(Runs, () => LightBox.Prepare(FramedStudio.Panel, FramedStudio.Surround, FramedStudio.Grid).Illuminate([FramedStudio.Flash(0)]));
        ProcessorCost.Row(output, "new box, lit", whole, whole);
        ProcessorCost.Row(output, "cradle moved with its flash", ProcessorCost.Of(Runs, () => box.WithFrame(FramedStudio.Frame(0.09 + (1e-4 * (++step % 100)))).Illuminate(Moved())), whole);
        ProcessorCost.Row(output, "flash moved", ProcessorCost.Of(Runs, () => box.Illuminate(Moved())), whole);
        ProcessorCost.Row(output, "flash moved, preview", ProcessorCost.Of(Runs, () => following.At(Moved())), whole);
        ProcessorCost.Row(output, "power changed", ProcessorCost.Of(Runs, () => map.AtIntensities([++step])), whole);
    }
}
