from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('waysaid_site', '0002_grade'),
    ]

    operations = [
        migrations.AddField(
            model_name='schoolclass',
            name='words',
            field=models.CharField(default='ours', max_length=20),
        ),
        migrations.AddField(
            model_name='schoolclass',
            name='own_names',
            field=models.JSONField(blank=True, default=dict),
        ),
    ]
