using System.Globalization;
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
        var step = 0;
        Emitter[] Moved() => [FramedStudio.Flash(0.001 * (++step % 100))];

        var whole = Processor(() => LightBox.Prepare(FramedStudio.Panel, FramedStudio.Surround, FramedStudio.Grid).Illuminate([FramedStudio.Flash(0)]));
        Row(output, "new box, lit", whole, whole);
        Row(output, "cradle moved with its flash", Processor(() => box.WithFrame(FramedStudio.Frame(0.09 + (1e-4 * (++step % 100)))).Illuminate(Moved())), whole);
        Row(output, "flash moved", Processor(() => box.Illuminate(Moved())), whole);
        Row(output, "flash moved, preview", Processor(() => box.Preview(Moved())), whole);
        Row(output, "power changed", Processor(() => map.AtIntensities([++step])), whole);
    }

    // Processor time of all threads, which other work on the machine hardly touches.
    private static double Processor(Action work)
    {
        for (var i = 0; i < Runs; i++)
        {
            work();
        }

        var before = Environment.CpuUsage.TotalTime;
        for (var i = 0; i < Runs; i++)
        {
            work();
        }

        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds / Runs;
    }

    private static void Row(TextWriter output, string change, double cost, double whole) =>
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{change,-28} {cost,7:0.00} ms, {cost / whole,5:0.00} of the whole"));
}
