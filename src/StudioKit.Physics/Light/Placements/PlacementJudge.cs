using System.Collections.Concurrent;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Solving;
using UnitsNet;

namespace StudioKit.Physics.Light.Placements;

/// <summary>Works out what one candidate gives; the boxes and the framings' points are made ready once for all of them.</summary>
internal sealed class PlacementJudge
{
    private readonly PlacementCase _search;
    private readonly FrameSamples[] _framings;
    private readonly int[] _starts;
    private readonly PanelExit _exit;
    private readonly ConcurrentDictionary<(Length Height, LightSurround Surround), Lazy<LightBox>> _boxes = new();

    public PlacementJudge(PlacementCase search)
    {
        _search = search;
        _framings = [.. search.Framings.Select(framing => new FrameSamples(search.Panel, framing))];
        _starts = [.. _framings.Select((_, index) => _framings.Take(index).Sum(framing => framing.Count))];
        _exit = new PanelExit(search.Panel);
    }

    /// <summary>The middle of what all framings see, on a sheet of some height.</summary>
    public Position Target(Length height)
    {
        var sums = _framings.Select(framing => framing.Sum).ToArray();
        var count = Math.Max(1, _framings.Sum(framing => framing.Count));
        return new PanelSurface(_search.Panel with { Height = height }).At(sums.Sum(sum => sum.X) / count, sums.Sum(sum => sum.S) / count);
    }

    public Placement Judge(PlacementCandidate candidate)
    {
        var panel = _search.Panel with { Height = candidate.PanelHeight };
        var emitters = candidate.Emitters(1);
        if (SceneCheck.Problems(panel, candidate.Surround, emitters).Count > 0)
        {
            return new Placement(candidate, [], Energy.Zero, default, PlacementLimit.Geometry);
        }

        var (light, surface) = (BoxFor(panel, candidate.Surround).Shine(emitters), new PanelSurface(panel));
        FramingLight[] framings = [.. _framings.Select((framing, index) => Lit(
            candidate, framing, framing.Margins(light, _starts[index], emitters, surface, _exit)))];
        var energy = candidate.Count * candidate.Flash.FullPowerEnergy * framings.Average(framing => framing.Power);
        return new Placement(candidate, framings, energy, new Stops(framings.Max(framing => framing.Spread.Value)), Limit(framings));
    }

    /// <summary>How far the worst framing lies beyond the limit that stops it [stops].</summary>
    public static double Excess(PlacementCase search, Placement placement) => placement.Limit switch
    {
        PlacementLimit.Veil => placement.Framings.Max(framing => framing.Brightest.Value - framing.Framing.HighestMargin.Value),
        PlacementLimit.FullPower => placement.Framings.Max(framing => Math.Log2(framing.Power)),
        _ => search.Framings.Count,
    };

    // Light grows in step with power, so full power's darkest point says what share brings it to the target.
    private FramingLight Lit(PlacementCandidate candidate, FrameSamples framing, (double Darkest, double Brightest) margins)
    {
        var (darkest, brightest) = margins;
        var power = Math.Max(candidate.Flash.LowestPower.Fraction, Math.Pow(2, _search.TargetMargin.Value - darkest));
        var gain = Math.Log2(power);
        return new FramingLight(framing.Framing, power, new Stops(darkest + gain), new Stops(brightest + gain));
    }

    private PlacementLimit Limit(FramingLight[] framings)
    {
        if (_framings.Any(framing => !framing.FillsFrame))
        {
            return PlacementLimit.PanelTooSmall;
        }

        if (framings.Any(framing => framing.Power > 1))
        {
            return PlacementLimit.FullPower;
        }

        return framings.Any(framing => framing.Brightest.Value > framing.Framing.HighestMargin.Value) ? PlacementLimit.Veil : PlacementLimit.None;
    }

    private LightBox BoxFor(LightPanel panel, LightSurround surround) => _boxes.GetOrAdd(
        (panel.Height, surround),
        _ => new Lazy<LightBox>(() => LightBox.At(
            panel, surround, [.. _framings.SelectMany(framing => framing.Underside(new PanelSurface(panel)))]))).Value;
}
