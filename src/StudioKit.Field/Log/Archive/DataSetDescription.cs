namespace StudioKit.Field.Log.Archive;

/// <summary>What is said of an exported log as a whole.</summary>
/// <param name="Title">Title of the data set.</param>
/// <param name="Creator">Who answers for it.</param>
/// <param name="Abstract">What it holds, in a sentence or two.</param>
/// <param name="Licence">Terms of use, best with an address.</param>
/// <param name="Published">Day of the export.</param>
public sealed record DataSetDescription(
    string Title, string Creator, string Abstract, string Licence, DateOnly Published);
