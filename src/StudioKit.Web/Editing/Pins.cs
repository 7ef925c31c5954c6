namespace StudioKit.Web.Editing;

/// <summary>States of kits that were pinned to be looked at side by side, as long as the page is open.</summary>
public sealed class Pins
{
    private readonly List<PinnedState> _states = [];

    /// <summary>The states, oldest first.</summary>
    public IReadOnlyList<PinnedState> States => _states;

    /// <summary>Pins a state.</summary>
    /// <param name="text">The kit's text.</param>
    /// <param name="figures">What to know it by.</param>
    public void Add(string text, string figures) =>
        _states.Add(new PinnedState(FormattableString.Invariant($"Pin {(_states.Count == 0 ? 1 : _states[^1].Number + 1)}: {figures}"), text, _states.Count == 0 ? 1 : _states[^1].Number + 1));

    /// <summary>Takes a pin out.</summary>
    /// <param name="state">The state.</param>
    public void Remove(PinnedState state) => _states.Remove(state);
}
