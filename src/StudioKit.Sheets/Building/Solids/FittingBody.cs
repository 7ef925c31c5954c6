using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>A fitting in its true outline: a body with a socket for every way, open where no pipe is in it.</summary>
/// <param name="Kind">Which fitting.</param>
/// <param name="Middle">Where its centre lines meet; for a cap, its floor [m].</param>
/// <param name="Ways">Unit vectors out of its sockets.</param>
/// <param name="Reach">Middle to the sockets' edges [m].</param>
/// <param name="Outer">Outer radius of its sockets [m].</param>
/// <param name="Bore">Radius of the pipe [m].</param>
internal sealed record FittingBody(FittingKind Kind, FramePoint Middle, IReadOnlyList<FramePoint> Ways, double Reach, double Outer, double Bore)
{
    private double Wall => Outer - Bore;

    /// <summary>Its socket ends and, for a cap, its closed end; the bars that its outline is made of.</summary>
    public IEnumerable<Tube> Bars()
    {
        foreach (var way in Ways)
        {
            var closed = Ways.Count == 1 ? Middle - (Wall * way) : Middle;
            yield return new Tube(closed, Middle + (Reach * way), Outer);
        }
    }

    public Solid In(Camera camera, Ink ink, Func<FramePoint, bool> open)
    {
        var ends = Ways.Select(way => Middle + (Reach * way)).Append(Ways.Count == 1 ? Middle - (Wall * Ways[0]) : Middle).ToList();
        var (low, high) = Box(ends);
        return new Solid(low, high, [.. Marks(camera, ink, open)]);
    }

    private IEnumerable<Primitive> Marks(Camera camera, Ink ink, Func<FramePoint, bool> open)
    {
        var order = Ways.OrderBy(way => way.Dot(camera.Towards)).ToList();
        var runs = order.Where(way => way.Dot(camera.Towards) <= 0 && order.Exists(other => other.Dot(way) < -0.99)).ToList();
        var single = order.Where(way => !order.Exists(other => other.Dot(way) < -0.99)).ToList();
        var drawn = new HashSet<FramePoint>();
        foreach (var way in single.Where(way => way.Dot(camera.Towards) < -1e-9))
        {
            foreach (var mark in Arm(camera, ink, way, open))
            {
                yield return mark;
            }

            drawn.Add(way);
        }

        foreach (var way in runs.Where(way => drawn.Add(way)))
        {
            var other = order.First(other => other.Dot(way) < -0.99);
            drawn.Add(other);
            yield return new Tube(Middle + (Reach * way), Middle + (Reach * other), Outer).Outline(camera, ink);
            foreach (var mark in End(camera, ink, other, open).Concat(End(camera, ink, way, open)))
            {
                yield return mark;
            }
        }

        if (runs.Count == 0 && Ways.Count > 1)
        {
            yield return new Circle(camera.At(Middle), Outer * camera.PerMetre, ink.Edge, ink.Face);
        }

        foreach (var way in single.Where(way => !drawn.Contains(way)).Concat(runs.Count > 2 ? order.Where(way => way.Dot(camera.Towards) > 1e-9) : []))
        {
            foreach (var mark in Arm(camera, ink, way, open))
            {
                yield return mark;
            }
        }
    }

    private IEnumerable<Primitive> Arm(Camera camera, Ink ink, FramePoint way, Func<FramePoint, bool> open)
    {
        var from = Ways.Count == 1 ? Middle - (Wall * way) : Middle;
        yield return new Tube(from, Middle + (Reach * way), Outer).Outline(camera, ink);

        // A cap's closed end where that is what one sees.
        foreach (var mark in End(camera, ink, way, open).Concat(Ways.Count == 1 ? new Tube(Middle, from, Outer).End(camera, ink, 0) : []))
        {
            yield return mark;
        }
    }

    private IEnumerable<Primitive> End(Camera camera, Ink ink, FramePoint way, Func<FramePoint, bool> open) =>
        new Tube(Middle, Middle + (Reach * way), Outer).End(camera, ink, open(way) ? Bore : 0);

    private (FramePoint Low, FramePoint High) Box(List<FramePoint> ends)
    {
        double Least(Func<FramePoint, double> axis) => ends.Min(axis);
        double Most(Func<FramePoint, double> axis) => ends.Max(axis);

        // Across its ways it is as thick as a socket; along them it ends where they do, so that a neighbour in line lies clear of it.
        var (right, back, up) = (Thick(way => way.Right), Thick(way => way.Back), Thick(way => way.Up));
        return (
            new FramePoint(Math.Min(Least(end => end.Right), Middle.Right - right.Low), Math.Min(Least(end => end.Back), Middle.Back - back.Low), Math.Min(Least(end => end.Up), Middle.Up - up.Low)),
            new FramePoint(Math.Max(Most(end => end.Right), Middle.Right + right.High), Math.Max(Most(end => end.Back), Middle.Back + back.High), Math.Max(Most(end => end.Up), Middle.Up + up.High)));
    }

    // How far the body goes beyond its middle where no socket does.
    private (double Low, double High) Thick(Func<FramePoint, double> axis)
    {
        var across = Ways.Any(way => Math.Abs(axis(way)) < 0.5);
        return across ? (Outer, Outer) : (0, 0);
    }
}
