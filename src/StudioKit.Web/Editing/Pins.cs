using StudioKit.Web.Storage;

namespace StudioKit.Web.Editing;

/// <summary>States of the kit in hand that were pinned to be looked at side by side; they are kept with it.</summary>
/// <param name="desk">The kit in hand.</param>
/// <param name="keeper">Keeps them.</param>
public sealed class Pins(Desk desk, KitKeeper keeper)
{
    /// <summary>The states, oldest first.</summary>
    public IReadOnlyList<PinnedState> States => desk.Kit?.Beside.Pins ?? [];

    /// <summary>Pins the kit as it stands.</summary>
    /// <param name="figures">What to know it by.</param>
    public Task AddAsync(string figures) => AddAsync(figures, desk.Kit?.Text ?? "");

    /// <summary>Pins a state of the kit in hand.</summary>
    /// <param name="figures">What to know it by.</param>
    /// <param name="text">The kit's text in that state.</param>
    public Task AddAsync(string figures, string text)
    {
        if (desk.Kit is not { } kit)
        {
            return Task.CompletedTask;
        }

        var number = States.Count == 0 ? 1 : States[^1].Number + 1;
        return KeepAsync(kit, [.. States, new PinnedState(FormattableString.Invariant($"Pin {number}: {figures}"), text, number)]);
    }

    /// <summary>Takes a pin out.</summary>
    /// <param name="number">Its number.</param>
    public Task RemoveAsync(int number) => desk.Kit is { } kit ? KeepAsync(kit, [.. States.Where(state => state.Number != number)]) : Task.CompletedTask;

    private Task KeepAsync(KitDocument kit, IReadOnlyList<PinnedState> states)
    {
        kit.Beside = kit.Beside with { Pins = states };
        return keeper.KeepBesideAsync();
    }
}
