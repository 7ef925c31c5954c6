namespace StudioKit.Web.Results;

/// <summary>A file that was made and waits in the worker to be taken.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Bytes">Its size in bytes.</param>
/// <param name="Problems">What did not fit on the paper; empty where all did.</param>
public sealed record MadeFile(string Name, int Bytes, IReadOnlyList<string> Problems);
