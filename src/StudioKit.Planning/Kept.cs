namespace StudioKit.Planning;

/// <summary>Results by the value of what went in, those used last; an equal input gives the same result without working it out again.</summary>
/// <remarks>Several threads may ask at once: a plan that is shared works out light and advice when they are asked for.</remarks>
/// <param name="most">How many are kept [1]; ≥ 1.</param>
internal sealed class Kept<TInput, TResult>(int most = 16)
    where TInput : notnull
{
    private readonly Dictionary<TInput, LinkedListNode<(TInput Input, TResult Result)>> _nodes = [];
    private readonly LinkedList<(TInput Input, TResult Result)> _byUse = new();

    /// <summary>The result for an input: kept, or made now from that input alone.</summary>
    public TResult Get(TInput input, Func<TInput, TResult> make)
    {
        lock (_nodes)
        {
            return KeptOrMade(input, make);
        }
    }

    private TResult KeptOrMade(TInput input, Func<TInput, TResult> make)
    {
        if (_nodes.TryGetValue(input, out var node))
        {
            _byUse.Remove(node);
            _byUse.AddFirst(node);
            return node.Value.Result;
        }

        var result = make(input);
        _nodes.Add(input, _byUse.AddFirst((input, result)));
        if (_byUse.Count > most)
        {
            _nodes.Remove(_byUse.Last!.Value.Input);
            _byUse.RemoveLast();
        }

        return result;
    }
}
