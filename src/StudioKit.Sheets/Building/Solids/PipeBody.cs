using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>A piece of pipe, or what of it is seen between its fittings.</summary>
/// <param name="From">First end of what is seen [m].</param>
/// <param name="To">Second end [m].</param>
/// <param name="Radius">Its outer radius [m].</param>
/// <param name="Bore">Radius of its bore [m].</param>
/// <param name="MarksAt">Insertion marks that are seen [m].</param>
internal sealed record PipeBody(FramePoint From, FramePoint To, double Radius, double Bore, IReadOnlyList<FramePoint> MarksAt)
{
    public Solid In(Camera camera, Ink ink, bool openFrom, bool openTo)
    {
        var tube = new Tube(From, To, Radius);
        var way = (1 / (To - From).Norm) * (To - From);
        var thick = new FramePoint(Across(way.Right), Across(way.Back), Across(way.Up));
        var (low, high) = (Corner(Math.Min) - thick, Corner(Math.Max) + thick);
        return new Solid(low, high,
        [
            tube.Outline(camera, ink),
            .. openTo ? tube.End(camera, ink, Bore) : [],
            .. openFrom ? new Tube(To, From, Radius).End(camera, ink, Bore) : [],
            .. MarksAt.Select(at => tube.Mark(camera, at, Stroke.Thin)),
        ]);
    }

    private double Across(double way) => Math.Abs(way) > 0.5 ? 0 : Radius;

    private FramePoint Corner(Func<double, double, double> choose) => new(choose(From.Right, To.Right), choose(From.Back, To.Back), choose(From.Up, To.Up));
}
