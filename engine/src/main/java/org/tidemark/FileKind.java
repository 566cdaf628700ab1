package org.tidemark;

import org.tidemark.load.Language;
import org.tidemark.load.OtherFiles;
import org.tidemark.model.Vocabulary;
import org.tidemark.model.Worded;
import org.tidemark.report.LanguageSchema;
import org.tidemark.trial.CaseLanguage;

/** The kinds of files that people write. */
public enum FileKind implements Worded {
  POLICY,
  CASES,
  FINDINGS,
  VOCABULARY,
  BIBLIOGRAPHY;

  String schema(Vocabulary words) {
    return switch (this) {
      case POLICY -> LanguageSchema.of(Language.policy(), words);
      case CASES -> LanguageSchema.of(CaseLanguage.file(), words);
      case FINDINGS -> LanguageSchema.ofFindings(words);
      case VOCABULARY -> LanguageSchema.of(OtherFiles.vocabulary(), words);
      case BIBLIOGRAPHY -> LanguageSchema.of(OtherFiles.bibliography(), words);
    };
  }
}
