namespace StudioKit.FieldFiles.Log;

/// <summary>Whether opening a log starts one.</summary>
internal enum LogStart
{
    /// <summary>It has to be there.</summary>
    Never,

    /// <summary>One is started where there is no file.</summary>
    WhereMissing,

    /// <summary>One is started, and there may be no file of its name.</summary>
    MustBeNew,
}
