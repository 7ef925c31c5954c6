using BenchmarkDotNet.Attributes;
using StudioKit.Cutting;
using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Benchmarks;

/// <summary>Cut plans: a frame of 40 pieces (at most 0.5 s, proven) and a workshop's batch of 2,000 (at most 10 s, with its gap).</summary>
[MemoryDiagnoser]
public class CutPlanBenchmarks
{
    private static readonly BarCutRequest Frame = new()
    {
        Pieces =
        [
            new("long rail", Length.FromMillimeters(1180), 4),
            new("short rail", Length.FromMillimeters(905), 4),
            new("leg", Length.FromMillimeters(760), 6),
            new("brace", Length.FromMillimeters(640), 4),
            new("cross", Length.FromMillimeters(455), 8),
            new("stub", Length.FromMillimeters(330), 4),
            new("foot", Length.FromMillimeters(290), 6),
            new("spacer", Length.FromMillimeters(145), 4),
        ],
        Stock =
        [
            new("2 m", Length.FromMeters(2), 6.20m),
            new("3 m", Length.FromMeters(3), 8.90m),
            new("offcut", Length.FromMillimeters(1450), 0, 3),
        ],
        Kerf = Length.FromMillimeters(3),
    };

    private static readonly BarCutRequest Batch = Frame with
    {
        // Fifty lengths, forty of each, spread over the range by a fixed stride.
        Pieces = [.. Enumerable.Range(0, 50).Select(i => new BarPiece($"P{i}", Length.FromMillimeters(150 + (i * 1733 % 2250)), 40))],
        Stock =
        [
            new("3 m", Length.FromMeters(3), 8.90m),
            new("6 m", Length.FromMeters(6), 16.50m),
            new("offcut", Length.FromMillimeters(1450), 0, 30),
        ],
    };

    /// <summary>40 pieces of 8 lengths over 3 stock lengths.</summary>
    [Benchmark]
    public BarCutPlan FrameOfFortyPieces() => Proven(new OptimalBarCutPlanner().Plan(Frame));

    /// <summary>2,000 pieces of 50 lengths over 3 stock lengths.</summary>
    [Benchmark]
    public BarCutPlan BatchOfTwoThousandPieces() => new OptimalBarCutPlanner().Plan(Batch);

    private static BarCutPlan Proven(BarCutPlan plan) => plan.Proof.ProvenOptimal
        ? plan
        : throw new InvalidOperationException("The figure asks for a proven plan.");
}
