package org.tidemark;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class RoomsTest {
  @Test
  void theEnginesClassesAreSeen() {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.tidemark");
    assertTrue(
        classes.contain("org.tidemark.model.package-info"), "the model's package is not seen");
  }
}
