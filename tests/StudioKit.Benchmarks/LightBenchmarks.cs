using BenchmarkDotNet.Attributes;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Placements;

namespace StudioKit.Benchmarks;

/// <summary>The light map's cost: a whole solve with skirts, the flashes alone once the box is ready, and growth with the points.</summary>
[MemoryDiagnoser]
public class LightBenchmarks
{
    private readonly LightScene _scene = LightStudio.WhiteSkirts;
    private readonly LightBox _framed = LightBox.Prepare(FramedStudio.Panel, FramedStudio.Surround, FramedStudio.Grid);
    private LightBox _box = null!;

    /// <summary>Panel points a side.</summary>
    [Params(12, 24, 48)]
    public int PointsPerSide { get; set; }

    [GlobalSetup]
    public void Prepare() => _box = LightBox.Prepare(_scene.Panel, _scene.Surround, new PanelGrid(PointsPerSide, PointsPerSide));

    [Benchmark]
    public LightMap Whole_map_with_skirts() => LightSolver.Solve(_scene, new PanelGrid(PointsPerSide, PointsPerSide));

    [Benchmark]
    public PlacementResult Search_of_two_thousand_places() => FlashPlacement.Search(LightSearch.Case);

    [Benchmark]
    public LightMap Flashes_in_a_ready_box() => _box.Illuminate(_scene.Emitters);

    [Benchmark]
    public LightMap New_framed_box_lit() => LightBox.Prepare(FramedStudio.Panel, FramedStudio.Surround, FramedStudio.Grid).Illuminate([FramedStudio.Flash(0)]);

    [Benchmark]
    public LightMap Moved_flash_in_a_framed_box() => _framed.Illuminate([FramedStudio.Flash(0.05)]);
}
