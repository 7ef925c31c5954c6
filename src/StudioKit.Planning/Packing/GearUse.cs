using StudioKit.Physics;

namespace StudioKit.Planning.Packing;

/// <summary>What one exposure needs of the gear.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
/// <param name="Works">Whether the exposure works.</param>
/// <param name="Gear">Names of lens, accessories, flashes, modifiers, holders, triggers, shelters, cover, support and filter.</param>
/// <param name="Flashes">Names of the flashes, whose cells come along.</param>
/// <param name="OnPanel">Whether it needs the studio: frame, panel and skirts.</param>
/// <param name="Upright">Name of the sheet that stands behind the subject; none where none does.</param>
internal sealed record GearUse(string SetUp, string Framing, bool Works, ValueList<string> Gear, ValueList<string> Flashes, bool OnPanel, string? Upright)
{
    /// <summary>What an exposure needs.</summary>
    public static GearUse Of(ExposurePlan exposure) => new(
        exposure.SetUp,
        exposure.Framing.Name,
        exposure.IsUsable,
        [
            exposure.Framing.Lens,
            .. exposure.Framing.Accessories,
            .. exposure.Lights.Select(light => light.Flash),
            .. exposure.Lights.Select(light => light.Modifier).OfType<string>(),
            .. exposure.Cover is { } cover ? new[] { cover } : [],
            .. exposure.Lights.Select(light => light.Holder).OfType<string>(),
            .. exposure.Lights.SelectMany(light => new[] { light.FiredBy?.Trigger, light.FiredBy?.Sender }).OfType<string>().Distinct(),
            .. exposure.Shelters.Select(shelter => shelter.Name),
            .. exposure.Support is { } support ? new[] { support } : [],
            .. exposure.Filter is { } filter ? new[] { filter } : [],
        ],
        [.. exposure.Lights.Select(light => light.Flash)],
        exposure.OnPanel,
        exposure.Upright);

    /// <summary>Things of the pack list beside the camera that the exposure cannot do without.</summary>
    public IEnumerable<string> Needs(IReadOnlyList<PackedItem> items) =>
        Gear.Concat(items.Where(item => item is { CellsOf: not null, InFlash: false } && Flashes.Contains(item.CellsOf)).Select(item => item.Name))
            .Concat(OnPanel ? items.Where(item => item is { Part: not null, Upright: null, BelongsTo: null }).Select(item => item.Name) : [])
            .Concat(Upright is null ? [] : items.Where(item => item.Upright == Upright).Select(item => item.Name))
            .Concat(items.Where(item => item.BelongsTo is { } owner && Gear.Contains(owner)).Select(item => item.Name))
            .Distinct(StringComparer.Ordinal);
}
