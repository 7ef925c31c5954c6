namespace StudioKit.Field.Log.Release;

/// <summary>One record of the log and what of it leaves, field by field.</summary>
/// <param name="Id">Identifier in the log.</param>
/// <param name="PublishedId">Identifier that it leaves under.</param>
/// <param name="Fields">Its fields, in the order of the archive's columns.</param>
public sealed record ReleasedRecord(string Id, string PublishedId, IReadOnlyList<ReleasedField> Fields)
{
    /// <summary>What leaves of a field; empty where it is withheld, was never recorded or is none of this record.</summary>
    /// <param name="term">Short name of its term.</param>
    public string this[string term] => Of(term)?.Published ?? "";

    /// <summary>What became of a field; none where it is none of this record.</summary>
    /// <param name="term">Short name of its term.</param>
    internal ReleasedField? Of(string term)
    {
        // Asked of every column of every row: a loop, as nothing is made for it.
        for (var i = 0; i < Fields.Count; i++)
        {
            if (Fields[i].Term == term)
            {
                return Fields[i];
            }
        }

        return null;
    }
}
