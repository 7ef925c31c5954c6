namespace StudioKit.Physics.Light.Solving;

/// <summary>What one obstacle takes out of a box's form factors.</summary>
/// <param name="Exchange">Places of the blocked pairs in the matrix between patches, both ways of each.</param>
/// <param name="Gather">Places of the blocked pairs in the matrix from points to patches.</param>
internal sealed record ShadowSet(int[] Exchange, int[] Gather)
{
    /// <summary>Sets every blocked factor to zero.</summary>
    public void Darken(FormFactors factors)
    {
        foreach (var place in Exchange)
        {
            factors.Exchange[place] = 0;
        }

        foreach (var place in Gather)
        {
            factors.Gather[place] = 0;
        }
    }
}
