using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Obstacles;
using UnitsNet;

namespace StudioKit.Benchmarks;

/// <summary>A studio of 600 mm × 400 mm with skirts on a frame of twenty pipe pieces: four rails, four legs of three pieces, two stretchers and two cradle bars at the flash.</summary>
internal static class FramedStudio
{
    private const double Aside = 0.2875;
    private const double Back = 0.1875;
    private const double Top = 0.4835;

    public static PanelGrid Grid { get; } = new(24, 24);

    public static LightPanel Panel { get; } = new()
    {
        Width = Length.FromMillimeters(600),
        Depth = Length.FromMillimeters(400),
        Height = Length.FromMillimeters(500),
    };

    public static LightSurround Surround { get; } = new() { SkirtReflectance = 0.8, FloorReflectance = 0.1, Frame = [.. Frame(0.0945)] };

    /// <summary>The frame with its cradle at a height [m].</summary>
    public static IReadOnlyList<Obstacle> Frame(double cradle) =>
    [
        Pipe(-Aside, -Back, Top, Aside, -Back, Top),
        Pipe(-Aside, Back, Top, Aside, Back, Top),
        Pipe(-Aside, -Back, Top, -Aside, Back, Top),
        Pipe(Aside, -Back, Top, Aside, Back, Top),
        .. Leg(-Aside, -Back, cradle), .. Leg(Aside, -Back, cradle), .. Leg(Aside, Back, cradle), .. Leg(-Aside, Back, cradle),
        Pipe(-Aside, -Back, cradle + 0.064, Aside, -Back, cradle + 0.064),
        Pipe(-Aside, Back, cradle + 0.064, Aside, Back, cradle + 0.064),
        Pipe(-Aside, -Back, cradle, -Aside, Back, cradle),
        Pipe(Aside, -Back, cradle, Aside, Back, cradle),
    ];

    /// <summary>A flash with its body, to the right of the middle [m].</summary>
    public static Emitter Flash(double right) => new Emitter
    {
        Centre = new Position(right, 0, 0.15),
        Width = Length.FromMillimeters(70),
        Height = Length.FromMillimeters(45),
        Lobe = new CosineLobe(2.5, 4),
        AxialIntensityTime = 100,
    }.WithBody(Length.FromMillimeters(100));

    private static Obstacle[] Leg(double x, double y, double cradle) =>
        [Pipe(x, y, Top, x, y, cradle + 0.064), Pipe(x, y, cradle + 0.064, x, y, cradle), Pipe(x, y, cradle, x, y, 0.044)];

    private static PipeObstacle Pipe(double x, double y, double z, double u, double v, double w) =>
        new(new Position(x, y, z), new Position(u, v, w), Length.FromMillimeters(21));
}
