using System.Collections.Concurrent;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Physics.Light.Placements;

/// <summary>Works out what one candidate gives; the boxes, the framings' points and each flash's light are made ready once for all of them.</summary>
internal sealed class PlacementJudge
{
    private readonly PlacementCase _search;
    private readonly FrameSampleSet _views;
    private readonly ConcurrentDictionary<(Length Height, LightSurround Surround), Lazy<PlacementBox>> _boxes = new();

    public PlacementJudge(PlacementCase search) => (_search, _views) = (search, new FrameSampleSet(search));

    /// <summary>The middle of what all framings see, on a sheet of some height.</summary>
    public Position Target(Length height)
    {
        var (x, s) = _views.Middle;
        return new PanelSurface(_search.Panel with { Height = height }).At(x, s);
    }

    public Placement Judge(PlacementCandidate candidate) => Of(candidate, isWhole: true);

    /// <summary>The same from the outlines of the framings alone: the other points can only bring darker and brighter ones, so energy and spread are the least that they may be, and no limit is named that does not hold.</summary>
    public Placement Bound(PlacementCandidate candidate) => Of(candidate, isWhole: false);

    private Placement Of(PlacementCandidate candidate, bool isWhole)
    {
        var margins = BoxFor(candidate).Margins(candidate.Emitters(1), isWhole);
        if (margins is null)
        {
            return new Placement(candidate, [], Energy.Zero, default, PlacementLimit.Geometry);
        }

        FramingLight[] framings = [.. _views.Framings.Select((framing, index) => Lit(candidate, framing, margins[index]))];
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
        if (!_views.FillsFrames)
        {
            return PlacementLimit.PanelTooSmall;
        }

        if (framings.Any(framing => framing.Power > 1))
        {
            return PlacementLimit.FullPower;
        }

        return framings.Any(framing => framing.Brightest.Value > framing.Framing.HighestMargin.Value) ? PlacementLimit.Veil : PlacementLimit.None;
    }

    private PlacementBox BoxFor(PlacementCandidate candidate) => _boxes.GetOrAdd(
        (candidate.PanelHeight, candidate.Surround),
        _ => new(() => new PlacementBox(_search.Panel with { Height = candidate.PanelHeight }, candidate.Surround, _views))).Value;
}
