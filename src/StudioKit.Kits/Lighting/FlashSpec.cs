using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Kits.Lighting;

/// <summary>A battery flash.</summary>
public sealed record FlashSpec
{
    /// <summary>Full-power flashes from one set of cells, where nothing else says how many [1] (common practice, no source).</summary>
    public const int UsualFlashesPerSet = 150;

    /// <summary>Name on the sheets; unique among the flashes.</summary>
    public required string Name { get; init; }

    /// <summary>Guide number at full power, e.g. <c>38 m @ ISO 100, 35 mm</c>.</summary>
    public required GuideNumber GuideNumber { get; init; }

    /// <summary>Guide numbers at other zoom settings.</summary>
    public ValueList<GuideNumber> Zooms { get; init; } = [];

    /// <summary>Zoom that the head is set to where a set-up names none; that of its guide number where the kit gives none.</summary>
    public Length? Zoom { get; init; }

    /// <summary>How far one click of its power dial goes.</summary>
    public PowerStep PowerStep { get; init; }

    /// <summary>Lowest power setting.</summary>
    public FlashPower LowestPower { get; init; } = new(1.0 / 128);

    /// <summary>Whether the camera can meter it through the lens, so that a compensation may be dialled instead of a power.</summary>
    public bool Metered { get; init; }

    /// <summary>Full width of the bare beam across at half intensity; follows from the zoom where the kit gives none.</summary>
    public Angle? BeamWidth { get; init; }

    /// <summary>Full height of the bare beam at half intensity.</summary>
    public Angle? BeamHeight { get; init; }

    /// <summary>How its bare beam was measured to spread at its own zoom; a cosⁿ lobe by coverage or zoom where the kit has no such file.</summary>
    public LightDistribution? LightDistribution { get; init; }

    /// <summary>Width of the bright window; with <see cref="HeadHeight"/> the file's <c>head: 70 mm x 40 mm</c>.</summary>
    public Length HeadWidth { get; init; } = Length.FromMillimeters(70);

    /// <summary>Height of the bright window.</summary>
    public Length HeadHeight { get; init; } = Length.FromMillimeters(40);

    /// <summary>Length of the whole flash as it lies with its bright window facing up; the file's <c>body: 200 mm x 75 mm x 50 mm</c> (common practice, no source).</summary>
    public Length BodyLength { get; init; } = Length.FromMillimeters(200);

    /// <summary>Width of the flash as it lies.</summary>
    public Length BodyWidth { get; init; } = Length.FromMillimeters(75);

    /// <summary>Height of its bright window over what it lies on.</summary>
    public Length BodyHeight { get; init; } = Length.FromMillimeters(50);

    /// <summary>Flash duration at full power, t0.1 by threshold.</summary>
    public Duration FullPowerDuration { get; init; } = Duration.FromSeconds(1.0 / 300);

    /// <summary>Time to recharge after a full-power flash with fresh cells.</summary>
    public Duration RecycleTime { get; init; } = Duration.FromSeconds(3);

    /// <summary>Energy of a flash at full power; none where it was not given.</summary>
    public Energy? Energy { get; init; }

    /// <summary>Full-power flashes from one set of cells, as counted or promised [1]; none where it was not given.</summary>
    public int? FlashesPerSet { get; init; }

    /// <summary>Cells it takes; none for a flash with its own battery.</summary>
    public CellSpec? Cell { get; init; }

    /// <summary>Cells in a set [1].</summary>
    public int CellCount { get; init; } = 4;

    /// <summary>Spare sets of cells carried [1].</summary>
    public int SpareSets { get; init; } = 1;

    /// <summary>Mass without cells; none where it was not given.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Full-power flashes that one set of cells is planned to give: as given, else what the cells' energy is enough for, else as usual [1].</summary>
    public int FullPowerFlashes => FlashesPerSet ?? FlashesFromCells ?? UsualFlashesPerSet;

    /// <summary>What the cells' energy is enough for [1]; none where the energy of a flash is unknown, or its cells are.</summary>
    internal int? FlashesFromCells => (Energy, Cell) is ({ } energy, { } cell)
        ? FlashEnergy.FlashesFromCells(CellCount, cell.Capacity, cell.Voltage, energy)
        : null;
}
