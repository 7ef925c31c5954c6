using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Packing;

/// <summary>How far the cells carried take a flash through the day.</summary>
public static class FlashBudget
{
    /// <summary>Flashes against cells.</summary>
    /// <param name="flashes">Flashes fired in the day [1]; ≥ 0.</param>
    /// <param name="share">Mean share of a full-power flash that one takes from the cells, standby counted [1]; above 0, at most 1.</param>
    /// <param name="flashesPerSet">Full-power flashes from one set of cells [1]; ≥ 1.</param>
    /// <param name="sets">Sets of cells carried, the one in the flash too [1]; ≥ 0.</param>
    /// <param name="reserve">Share of a set that cold and standing by use up [1]; 0 up to, not including, 1.</param>
    /// <returns>Sets needed and flashes carried.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>Energy goes with the share taken; flashes·share/(flashes per set·(1 − reserve)). Cards, session and pack all count by this.</remarks>
    [Source("CommonPractice", "energy of a flash goes with its power; a fifth of a set kept in reserve")]
    public static FlashBudgetResult For(int flashes, double share, int flashesPerSet, int sets, double reserve = 0.2)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(flashes);
        ArgumentOutOfRangeException.ThrowIfLessThan(flashesPerSet, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(sets);
        Guard.Between(Guard.Positive(share), 0, 1);
        var usable = flashesPerSet * (1 - Guard.Between(reserve, 0, 0.99));
        var full = flashes * share;

        // A millionth of a set is floating point, not a flash.
        return new FlashBudgetResult(
            full,
            (int)Math.Ceiling((full / usable) - 1e-6),
            (int)Math.Min(int.MaxValue, Math.Floor((sets * usable / share) + 1e-6)),
            full <= (sets * usable) + 1e-6);
    }
}
