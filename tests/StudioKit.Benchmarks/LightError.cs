using System.Diagnostics;
using System.Globalization;
using StudioKit.Physics.Light;

namespace StudioKit.Benchmarks;

/// <summary>Prints the light map's error against its time, beside a plain Monte-Carlo at the same error, in one run.</summary>
internal static class LightError
{
    // Radiance (rtrace), the open lighting simulator of Lawrence Berkeley National Laboratory: the same box at 3 × 3 points,
    // −0.4, 0 and 0.4 of width and depth, front row first; repeats spread by up to 0.6 %.
    private static readonly double[] Reference =
        [6.87542, 8.85562, 6.87726, 7.88592, 10.60067, 7.88258, 6.88222, 8.86336, 6.87244];

    public static void Print(TextWriter output)
    {
        output.WriteLine("Box 600 mm x 450 mm x 500 mm, skirts 0.85, floor 0.30, panel 0.35; error: greatest of nine points against Radiance.");
        output.WriteLine("| method                    | panel points | greatest error | time       | processor   | processor a point |");
        output.WriteLine("| ------------------------- | ------------ | -------------- | ---------- | ----------- | ----------------- |");
        var solver = SolverError();
        foreach (var side in new[] { 6, 12, 24, 48, 96 })
        {
            var grid = new PanelGrid(side, side);
            Row(output, "radiosity, whole map", side * side, solver, Best(() => LightSolver.Solve(LightStudio.WhiteSkirts, grid)));
        }

        var box = LightBox.Prepare(LightStudio.WhiteSkirts.Panel, LightStudio.WhiteSkirts.Surround, new PanelGrid(24, 24));
        Row(output, "radiosity, box at hand", 576, solver, Best(() => box.Illuminate(LightStudio.WhiteSkirts.Emitters)));
        foreach (var paths in new[] { 100, 1_000, 10_000, 100_000 })
        {
            var error = 0.0;
            var cost = Measured(() => error = MonteCarlo(paths), runs: 1);
            Row(output, Invariant($"Monte-Carlo, {paths} paths"), 9, error, cost);
        }
    }

    private static double SolverError()
    {
        var map = LightSolver.Solve(LightStudio.WhiteSkirts, new PanelGrid(5, 5));
        return Enumerable.Range(0, 9).Max(i => Math.Abs((map.Exposure(i % 3 * 2, i / 3 * 2) / Reference[i]) - 1));
    }

    private static double MonteCarlo(int paths)
    {
        var box = new MonteCarloBox(LightStudio.WhiteSkirts, seed: 20260101);
        var worst = 0.0;
        for (var i = 0; i < 9; i++)
        {
            var point = new Position(((i % 3) - 1) * 0.4 * 0.6, ((i / 3) - 1) * 0.4 * 0.45, 0.5);
            worst = Math.Max(worst, Math.Abs((box.Exposure(point, paths) / Reference[i]) - 1));
        }

        return worst;
    }

    private static Cost Best(Action work)
    {
        // Enough calls for the compiler to have settled on its fastest code.
        for (var i = 0; i < 40; i++)
        {
            work();
        }

        return Measured(work, runs: 20);
    }

    // Shortest time, since the machine's other work only ever adds, and mean processor time of both cores, which it hardly touches.
    private static Cost Measured(Action work, int runs)
    {
        var (shortest, busy) = (double.PositiveInfinity, Environment.CpuUsage.TotalTime);
        for (var i = 0; i < runs; i++)
        {
            var watch = Stopwatch.StartNew();
            work();
            shortest = Math.Min(shortest, watch.Elapsed.TotalMilliseconds);
        }

        return new Cost(shortest, (Environment.CpuUsage.TotalTime - busy).TotalMilliseconds / runs);
    }

    private static void Row(TextWriter output, string method, int points, double error, Cost cost) => output.WriteLine(Invariant(
        $"| {method,-25} | {points,12} | {100 * error,12:0.00} % | {cost.Time,7:0.00} ms | {cost.Processor,8:0.00} ms | {1000 * cost.Processor / points,14:0.0} us |"));

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private readonly record struct Cost(double Time, double Processor);
}
